package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.files.OutputFile;

/** The self-check follows every dialect: what is right passes, and a hole less does not. */
class DialectCheckTest {
  /** Two pieces on two sheets: a dialect spells a few holes as it spells many. */
  private static final String WALL =
      """
      [wall]
      name = "Two pieces"
      raise = 300
      [[facet]]
      angle = 30
      length = 1220
      width = 2000
      [inserts]
      pattern = "grid"
      when-blocked = "drop"
      [machine]
      """;

  private static final String MILL =
      "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\nspeed = 18000\n";
  private static final String SMALL =
      "[[tool]]\nkind = \"end-mill\"\ndiameter = 3\nlength = 22\nspeed = 18000\n";
  private static final String SUNK =
      """
      screw-holes = "countersunk"
      [[tool]]
      diameter = 5
      length = 30
      [[tool]]
      kind = "countersink"
      diameter = 12
      length = 10
      point-angle = 82
      tip-diameter = 0.5
      """
          + MILL;
  private static final String MARKED =
      """
      marks = "engraved"
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      point-angle = 60
      tip-diameter = 0.2
      """
          + MILL;

  /** All that a controller may want around the moves. */
  private static final String FULL =
      """
      percent-lines = true
      program-number = 1200
      safe-start = true
      work-offset = "g59"
      arcs = true
      arc-centres = "from-zero"
      runs-beside = "m8"
      park-x = -50
      tool-change = "word"
      line-numbers = true
      """;

  private static final String PECKING = "[[tool]]\ndiameter = 12\nlength = 30\npeck = 9\n";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        PECKING,
        "drill-cycles = \"canned\"\n",
        "drill-cycles = \"canned\"\n" + PECKING,
        "tool-change = \"word\"\n",
        "tool-change = \"pause\"\n",
        "dwell-unit = \"milliseconds\"\n",
        "line-numbers = true\n",
        "comments = \"semicolon\"\nline-length = 250\n",
        "comments = \"none\"\nline-length = 70\n",
        "program-unit = \"in\"\n",
        "program-unit = \"in\"\ndrill-cycles = \"canned\"\nline-numbers = true\n",
        "origin = \"upper-right\"\n",
        "z-zero = \"sheet-top\"\n",
        MILL,
        SMALL,
        "arcs = true\n" + MILL,
        "arcs = true\n" + SMALL,
        "arcs = true\nprogram-unit = \"in\"\ntool-change = \"word\"\n" + MILL,
        "percent-lines = true\nprogram-number = 97\nwork-offset = \"g56\"\n",
        "safe-start = true\npark-x = 500\npark-y = 3000\nline-numbers = true\n",
        "arcs = true\narc-centres = \"from-start\"\nruns-beside = \"m7\"\n" + MILL,
        FULL + MILL,
        "outlines = \"tabs\"\n" + MILL,
        "outlines = \"tabs\"\ntab-ramp = 15\n" + MILL,
        "outlines = \"tabs\"\nentry = \"helix\"\ntab-ramp = 12\n" + SMALL,
        "outlines = \"skin\"\nentry = \"helix\"\n" + MILL,
        "screw-holes = \"through\"\n",
        SUNK,
        MARKED,
        "arcs = true\nprogram-unit = \"in\"\ntool-change = \"pause\"\n" + MARKED,
        "outlines = \"skin\"\ntool-change = \"word\"\norigin = \"lower-right\"\n"
            + MARKED
            + "[nesting]\nface-up = \"back\"\n",
        "arcs = true\nprogram-unit = \"in\"\ntool-change = \"word\"\n" + SUNK,
        "drill-cycles = \"canned\"\ntool-change = \"pause\"\nz-zero = \"sheet-top\"\n" + SUNK,
        "outlines = \"skin\"\ncut-direction = \"conventional\"\norigin = \"upper-left\"\n" + MILL,
        "outlines = \"tabs\"\nprogram-unit = \"in\"\ntool-change = \"pause\"\n" + PECKING + MILL,
        "outlines = \"tabs\"\ntool-change = \"word\"\n[nesting]\nface-up = \"back\"\n" + MILL
      })
  void everyDialectIsReadBack(String dialect) {
    Design.Judged wall = (Design.Judged) Designs.of("wall.toml", WALL + dialect);
    List<OutputFile> files = Deliverable.programs(wall);
    assertThat(files).anyMatch(file -> file.path().endsWith(".ngc"));
    List<OutputFile> moved = new ArrayList<>();
    for (OutputFile file : files) {
      String program = new String(file.content(), StandardCharsets.UTF_8);
      boolean damaged = file.path().endsWith(".ngc");
      moved.add(
          damaged
              ? OutputFile.text(file.path(), program.replaceFirst("(\n[NG][^\n]* Y-?)", "$19"))
              : file);
    }
    assertThatThrownBy(() -> ProgramRelease.require(wall.checked().layout(), moved))
        .isInstanceOf(IllegalStateException.class);
  }

  /** What stands around the moves is held as strictly as they are. */
  @ParameterizedTest
  @CsvSource({
    "%,''",
    "O1200,O1201",
    "G59,G58",
    "G59,G54",
    "G40 G49 G80,G49",
    "G90.1,G91.1",
    "M8,M9",
    "M9,M8",
    "X-50. Y0.,X-49. Y0.",
    "M5/N,M5/N9 G54/N"
  })
  void whatStandsAroundTheMovesIsHeld(String good, String bad) {
    Design.Judged wall = (Design.Judged) Designs.of("wall.toml", WALL + FULL + MILL);
    List<OutputFile> files = Deliverable.programs(wall);
    List<OutputFile> changed = new ArrayList<>();
    for (OutputFile file : files) {
      String program = new String(file.content(), StandardCharsets.UTF_8);
      String other = program.replaceFirst(good.replace('/', '\n'), bad.replace('/', '\n'));
      boolean damaged = changed.isEmpty();
      assertThat(!damaged || !other.equals(program)).isTrue();
      changed.add(damaged ? OutputFile.text(file.path(), other) : file);
    }
    assertThatThrownBy(() -> ProgramRelease.require(wall.checked().layout(), changed))
        .isInstanceOf(IllegalStateException.class);
  }

  /** A program that the controller would take for another of the wall's. */
  @Test
  void numbersCountOnThroughTheWall() {
    String many = FULL.replace("tool-change = \"word\"", "");
    Design.Judged wall =
        (Design.Judged) Designs.of("wall.toml", WALL.replace("1220", "2440") + many + MARKED);
    List<String> numbers =
        Deliverable.programs(wall).stream()
            .filter(file -> file.path().endsWith(".ngc"))
            .map(file -> new String(file.content(), StandardCharsets.UTF_8).split("\n", -1)[1])
            .toList();
    assertThat(numbers).containsExactly("O1200", "O1201", "O1202", "O1203");
  }
}
