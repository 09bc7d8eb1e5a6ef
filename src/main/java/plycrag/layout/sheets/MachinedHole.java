package plycrag.layout.sheets;

import java.util.Optional;
import org.locationtech.jts.geom.Point;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/**
 * A hole that a machine makes, or a hand with a drill.
 *
 * @param mark the mark of what goes in
 * @param facet the facet's name
 * @param piece the piece's mark
 * @param sheet the stock sheet's mark
 * @param kind what it is for
 * @param place in the facet's (u, v), mm
 * @param x on the sheet as it lies on the machine, from its lower left corner, mm
 * @param y likewise, up
 * @param diameter mm
 * @param depth from the drilled face, breakthrough not counted, mm
 * @param side the face it is drilled from
 */
public record MachinedHole(
    String mark,
    String facet,
    String piece,
    String sheet,
    Kind kind,
    Point place,
    double x,
    double y,
    double diameter,
    double depth,
    SheetFace side) {

  /** What a hole is for. */
  public enum Kind {
    /** The barrel of a threaded insert. */
    INSERT("insert"),
    /** The flange of a threaded insert, which lies below the back then; it does not go through. */
    RECESS("recess"),
    /** The thread of a screw, which is not to bite in the sheet. */
    SCREW("screw"),
    /** The head of a screw, a cone of the hole's diameter on the face. */
    COUNTERSINK("countersink"),
    /** A pin on which the sheet is turned over; it is in no piece, and its place is the sheet's. */
    PIN("pin");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in lists. */
    public String word() {
      return word;
    }
  }

  /** The same once the sheet is turned over from left to right, mm. */
  MachinedHole turnedOver(double width) {
    return new MachinedHole(
        mark, facet, piece, sheet, kind, place, width - x, y, diameter, depth, side);
  }

  /** The same from a face, so deep, mm. */
  MachinedHole from(SheetFace face, double newDepth) {
    return new MachinedHole(mark, facet, piece, sheet, kind, place, x, y, diameter, newDepth, face);
  }

  /** How a person tells it from others: the recess and the hole of an insert share a mark. */
  public String name() {
    return (kind == Kind.RECESS ? "recess " : "hole ") + mark;
  }

  /** Whether it is a cone at the end of another hole. */
  public boolean isSunk() {
    return kind == Kind.COUNTERSINK;
  }

  /**
   * What makes it, if one of the tools does.
   *
   * @param reach how far the tool goes below the sheet's top, breakthrough included, mm
   */
  public Optional<Tool> tool(ToolBox tools, double reach) {
    return switch (kind) {
      case COUNTERSINK -> tools.forHead(diameter);
      case RECESS -> tools.forRecess(diameter, reach);
      case INSERT, SCREW, PIN -> tools.forHole(diameter, reach);
    };
  }
}
