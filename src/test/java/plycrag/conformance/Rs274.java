package plycrag.conformance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plycrag.files.ngc.NgcReader;

/** What LinuxCNC's interpreter makes of a program; its canonical moves turned back into holes. */
public final class Rs274 {
  private static final Pattern MOVE =
      Pattern.compile("STRAIGHT_(FEED|TRAVERSE)\\((\\S+), (\\S+), (\\S+),.*");

  private static final String TOOLS =
      Path.of("src/test/resources/rs274/tools.tbl").toAbsolutePath().toString();

  private Rs274() {}

  /** The interpreter's output; its machine holds tools 1 to 20, all without length. */
  public static Tools.Result interpret(Path program) {
    return Tools.run("rs274", "-g", "-t", TOOLS, program.toAbsolutePath().toString());
  }

  /** The holes in the order in which they are drilled: where a feed ends. */
  public static List<NgcReader.Hole> holes(Path program) {
    Tools.Result result = interpret(program);
    if (result.exit() != 0
        || !result.output().contains("PROGRAM_END()")
        || !result.output().contains("USE_LENGTH_UNITS(CANON_UNITS_MM)")) {
      throw new AssertionError(program + ": " + result);
    }
    List<NgcReader.Hole> holes = new ArrayList<>();
    Matcher moves = MOVE.matcher(result.output());
    while (moves.find()) {
      if (moves.group(1).equals("FEED")) {
        holes.add(new NgcReader.Hole(at(moves, 2), at(moves, 3), at(moves, 4)));
      }
    }
    return holes;
  }

  /**
   * Where the tool leaves the work upward: the last cut, straight or along an arc, before a rapid.
   *
   * @param unit of the program, MM or INCHES, as are the places
   */
  public static List<NgcReader.Hole> left(Path program, String unit) {
    Tools.Result result = interpret(program);
    if (result.exit() != 0
        || !result.output().contains("PROGRAM_END()")
        || !result.output().contains("USE_LENGTH_UNITS(CANON_UNITS_" + unit + ")")) {
      throw new AssertionError(program + ": " + result);
    }
    List<NgcReader.Hole> left = new ArrayList<>();
    NgcReader.Hole last = null;
    Matcher moves = MOVE.matcher(result.output());
    while (moves.find()) {
      boolean cut = moves.group(1).equals("FEED");
      if (!cut && last != null) {
        left.add(last);
      }
      last = cut ? new NgcReader.Hole(at(moves, 2), at(moves, 3), at(moves, 4)) : null;
    }
    return left;
  }

  private static double at(Matcher moves, int group) {
    return Double.parseDouble(moves.group(group));
  }
}
