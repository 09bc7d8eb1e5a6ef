package plycrag.stock;

import plycrag.catalog.FlatSteel;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.solve.fixing.SteelFit;
import plycrag.units.Decimal;
import plycrag.units.Tape;

/** The sizes of brackets, straps and hinges in words. */
public final class SteelSize {
  private static final double SQUARE = 90;

  private SteelSize() {}

  /** Legs, width and thickness of an angle, else length over all, width and thickness. */
  static String millimetres(FlatSteel steel) {
    String sides =
        steel.shape() == Shape.ANGLE
            ? mm(steel.legs().length()) + " x " + mm(steel.legs().length())
            : mm(2 * steel.legs().length());
    return sides + " x " + mm(steel.legs().width()) + " x " + mm(steel.legs().thickness());
  }

  private static String mm(double length) {
    return Decimal.of(length, 2);
  }

  /** As price lists give it, mm. */
  static Double[] sides(FlatSteel steel) {
    double first = steel.shape() == Shape.ANGLE ? steel.legs().length() : 2 * steel.legs().length();
    return new Double[] {first, steel.legs().width(), steel.legs().thickness()};
  }

  /** The same with its unit, the bend if it is none as sold, and the screws in it. */
  public static String words(SteelFit fit, Tape tape) {
    return piece(fit) + ", " + screws(fit, tape);
  }

  /** The same without its screws; what is sold under a name, with that before it. */
  static String piece(SteelFit fit) {
    boolean bent = fit.steel().shape() == Shape.ANGLE && fit.angle() != SQUARE;
    String bend = bent ? ", bent to " + Decimal.of(fit.angle(), 0) + "°" : "";
    String name = fit.steel().isSold() ? fit.steel().article() + ", " : "";
    return name + millimetres(fit.steel()) + " mm" + bend;
  }

  /** What one must be that is not sold under a name; empty for one that is. */
  static String requirement(FlatSteel steel) {
    if (steel.isSold()) {
      return "";
    }
    String sides =
        switch (steel.shape()) {
          case ANGLE -> "legs of " + mm(steel.legs().length()) + " mm or little more";
          case STRAP -> "a length of " + mm(2 * steel.legs().length()) + " mm or little more";
          case HINGE -> mm(2 * steel.legs().length()) + " mm over both leaves or less";
        };
    String middle = steel.shape() == Shape.ANGLE ? "bend" : "middle";
    return "any that has "
        + sides
        + ", a width of at most "
        + mm(steel.legs().width())
        + " mm, steel of at least "
        + mm(steel.legs().thickness())
        + " mm, and no hole nearer than "
        + mm(steel.holes().first())
        + " mm to the "
        + middle;
  }

  /** Its screws. */
  static String screws(SteelFit fit, Tape tape) {
    return fit.screws()
        + " screws of "
        + tape.bareSize(fit.diameter())
        + " x "
        + tape.size(fit.length());
  }
}
