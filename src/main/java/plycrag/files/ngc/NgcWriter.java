package plycrag.files.ngc;

import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.units.Decimal;

/** Writes drilling programs. */
public final class NgcWriter {
  /** Millimetres, absolute, feed per minute, the XY plane, the first work offset. */
  private static final String MODES = "G21 G90 G94 G17 G54";

  private NgcWriter() {}

  /**
   * The text of a program, ASCII.
   *
   * @throws IllegalStateException if the order of the moves is not safe, a defect of their maker
   */
  public static String write(DrillProgram program) {
    StringBuilder out = new StringBuilder();
    program.remarks().stream()
        .flatMap(remark -> Comments.of(remark).stream())
        .forEach(comment -> out.append(comment).append('\n'));
    out.append(MODES).append('\n');
    SafeOrder order = new SafeOrder();
    for (Move move : program.moves()) {
      order.follow(move);
      out.append(line(move)).append('\n');
    }
    order.end();
    return out.append("M2\n").toString();
  }

  private static String line(Move move) {
    if (move instanceof Move.RapidZ rapid) {
      return "G0 Z" + number(rapid.z());
    }
    if (move instanceof Move.RapidXy rapid) {
      return "G0 X" + number(rapid.x()) + " Y" + number(rapid.y());
    }
    if (move instanceof Move.Plunge plunge) {
      return "G1 Z" + number(plunge.z()) + " F" + positive(plunge.feed());
    }
    if (move instanceof Move.Dwell dwell) {
      return "G4 P" + number(dwell.seconds());
    }
    return move instanceof Move.SpindleOn on ? "M3 S" + positive(on.speed()) : "M5";
  }

  private static String number(double value) {
    return Decimal.of(value, 3);
  }

  private static String positive(double value) {
    String number = number(value);
    if (value < 0 || number.equals("0")) {
      throw new IllegalStateException("unsafe program: a feed or speed of " + number);
    }
    return number;
  }
}
