package plycrag.files.ngc;

import java.util.List;
import plycrag.document.DrillProgram;
import plycrag.document.Move;
import plycrag.units.LengthUnit;

/** Writes programs. */
public final class NgcWriter {
  private NgcWriter() {}

  /**
   * The text of a program as a controller wants it, ASCII.
   *
   * @throws IllegalStateException if the order of the moves is not safe, a defect of their maker
   */
  public static String write(DrillProgram program, Dialect dialect) {
    Lines lines = new Lines(dialect.look());
    Dialect.Frame frame = dialect.frame();
    percent(frame, lines);
    frame.number().ifPresent(number -> lines.bare("O" + digits(number)));
    program.remarks().forEach(lines::remark);
    lines.code(modes(dialect));
    frame.opening().further().forEach(lines::code);
    SafeOrder order = new SafeOrder();
    MoveWords words = new MoveWords(dialect, lines);
    for (Move move : program.moves()) {
      order.follow(move);
      words.write(move);
    }
    words.closeCycle();
    order.end();
    lines.code(List.of("M2"));
    percent(frame, lines);
    return lines.text();
  }

  private static void percent(Dialect.Frame frame, Lines lines) {
    if (frame.percent()) {
      lines.bare("%");
    }
  }

  /** Four of them, as controllers show them. */
  private static String digits(int number) {
    String digits = String.valueOf(number);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  /** The unit, absolute, feed per minute, the XY plane, the work offset. */
  private static List<String> modes(Dialect dialect) {
    String unit = dialect.unit() == LengthUnit.MM ? "G21" : "G20";
    return List.of(unit, "G90", "G94", "G17", dialect.frame().opening().offset());
  }
}
