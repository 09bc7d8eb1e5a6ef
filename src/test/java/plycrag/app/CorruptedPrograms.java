package plycrag.app;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import plycrag.files.OutputFile;

/** The programs of a small piece that takes all kinds of work, to be changed and judged. */
public final class CorruptedPrograms {
  /** A window; holes bored and pecked, a mark behind, tabs. */
  static final String WALL =
      """
      [wall]
      name = "Bay"
      [[facet]]
      name = "low"
      width = 700
      length = 500
      [[cutout]]
      left = 200
      low = 200
      width = 99
      height = 60
      [inserts]
      pattern = "lines"
      columns = [150, 550]
      rows = [150, 350]
      when-blocked = "drop"
      [nesting]
      cut-with = "router"
      edge-trim = 40
      [machine]
      outlines = "tabs"
      clearance-height = 5
      screw-holes = "through"
      marks = "behind"
      spindle-speed = 18000
      arcs = true
      [[tool]]
      diameter = 5
      length = 30
      peck = 6
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      pass-depth = 5
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      [[tool]]
      diameter = 6
      length = 30
      """;

  static final Design.Judged JUDGED = (Design.Judged) Designs.of("bay.toml", WALL);
  static final List<OutputFile> FILES = Deliverable.programs(JUDGED);

  private CorruptedPrograms() {}

  /** The names of their files, in the order in which they run. */
  public static List<String> paths() {
    return FILES.stream().map(OutputFile::path).filter(path -> path.endsWith(".ngc")).toList();
  }

  /** One as it is. */
  public static String text(String path) {
    OutputFile found =
        FILES.stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow();
    return new String(found.content(), StandardCharsets.UTF_8);
  }

  /** Whether the folder would be released with one changed. */
  public static boolean passes(String path, String changed) {
    try {
      release(path, changed);
      return true;
    } catch (IllegalStateException refused) {
      return false;
    }
  }

  static void release(String path, String changed) {
    List<OutputFile> all = new ArrayList<>();
    for (OutputFile file : FILES) {
      all.add(file.path().equals(path) ? OutputFile.text(path, changed) : file);
    }
    ProgramRelease.require(JUDGED.checked().layout(), all);
  }
}
