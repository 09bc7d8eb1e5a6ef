package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.HoleList;
import plycrag.files.OutputFile;

/**
 * Four inserts with flanges of 26 mm let in 4 mm deep, 27 mm wide, on a piece of 1200 by 1200 mm:
 * the first stands 100 mm from its left and its lower edge. With the back up the piece lies
 * mirrored: what is 100 across lies at 1100. Where the front lies up, the sheet of 2440 mm is
 * turned over first: what is 100 across lies at 2340.
 */
class RecessCheckTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 250]
      recess-depth = 4
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      kind = "end-mill"
      diameter = 10
      length = 22
      pass-depth = 3
      speed = 18000
      [[tool]]
      diameter = 6
      length = 30
      [nesting]
      face-up = "%s"
      [machine]
      arcs = true
      %s
      """;

  private static Design.Judged wall(String faceUp, String machine) {
    String toml = WALL.formatted(faceUp, machine);
    return (Design.Judged) Designs.of("bay.toml", toml);
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }

  private static String named(String path, List<OutputFile> files) {
    return text(files.stream().filter(file -> file.path().equals(path)).findFirst().orElseThrow());
  }

  private static List<String> programs(List<OutputFile> files) {
    return files.stream()
        .map(OutputFile::path)
        .filter(path -> path.endsWith(".ngc"))
        .sorted()
        .toList();
  }

  private static void refuses(
      Design.Judged wall, List<OutputFile> files, UnaryOperator<String> change, String sentence) {
    List<OutputFile> all = new ArrayList<>();
    for (OutputFile file : files) {
      boolean meant = file.path().equals("cnc/sheet-S1-back-t02.ngc");
      String changed = meant ? change.apply(text(file)) : "";
      assertThat(meant && changed.equals(text(file))).isFalse();
      all.add(meant ? OutputFile.text(file.path(), changed) : file);
    }
    assertThatThrownBy(() -> ProgramRelease.require(wall.checked().layout(), all))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(sentence);
  }

  @Test
  void areCutInTheSameSettingWhereTheBackLiesUp() {
    List<OutputFile> files = Deliverable.of(wall("back", ""));
    assertThat(programs(files))
        .containsExactly("cnc/sheet-S1-back-t01.ngc", "cnc/sheet-S1-back-t02.ngc");
    HoleList list = HoleList.of(new StringReader(named("lists/holes.csv", files)));
    assertThat(list.on("S1", "back")).hasSize(8);
    assertThat(list.rows())
        .contains(
            new HoleList.Row("main 10/10", "insert", "S1", "back", 1100, 100, 12, 18),
            new HoleList.Row("main 10/10", "recess", "S1", "back", 1100, 100, 27, 4));
  }

  @Test
  void areCutBeforeTheSheetIsTurnedOverWhereTheFrontLiesUp() {
    List<OutputFile> files = Deliverable.of(wall("front", ""));
    assertThat(programs(files))
        .containsExactly(
            "cnc/sheet-S1-back-t01.ngc", "cnc/sheet-S1-back-t02.ngc", "cnc/sheet-S1-front-t03.ngc");
    HoleList list = HoleList.of(new StringReader(named("lists/holes.csv", files)));
    assertThat(list.on("S1", "back")).extracting(HoleList.Row::kind).containsOnly("pin", "recess");
    assertThat(list.rows())
        .contains(
            new HoleList.Row("main 10/10", "insert", "S1", "front", 100, 100, 12, 18),
            new HoleList.Row("main 10/10", "recess", "S1", "back", 2340, 100, 27, 4));
  }

  /** The sheet, the book, the drawings for the machine: 18 mm less 4 mm. */
  @Test
  void sayEverywhereWhatRemains() {
    List<OutputFile> files = Deliverable.of(wall("front", ""));
    assertThat(named("cnc/sheet-S1-back-t02.ngc", files))
        .contains("(RECESSES 27 WIDE 4 DEEP LEAVE 14)");
    assertThat(named("cnc/sheet-S1-back-t01.ngc", files)).doesNotContain("RECESSES");
    assertThat(named("cnc/sheet-S1-back.html", files))
        .contains("4, 27 mm across and 4 mm deep in the back: 14 mm of ", "18 mm remain");
    assertThat(named("cnc/sheet-S1-front.html", files)).doesNotContain("Flange recesses");
    assertThat(named("drawings/sheet-S1-back.dxf", files)).contains("POCKET_DEPTH_4_0_LEAVES_14_0");
    assertThat(named("drawings/sheet-S1-front.dxf", files)).doesNotContain("POCKET");
    String words = "27 mm across, 4 mm deep; 14 mm of 18 mm remain.";
    assertThat(named("drawings/sheet-S1-back.svg", files)).contains(words);
    assertThat(named("drawings/insert-and-seam.svg", files)).contains(words);
    assertThat(named("index.html", files)).contains(words);
  }

  /** One mill for recess and hole: its widening rounds do not run into each other. */
  @ParameterizedTest
  @CsvSource({"front, word, mm", "back, word, mm", "back, program, in"})
  void passTheirCheckWithOneMillForAll(String faceUp, String change, String unit) {
    String machine = "tool-change = \"%s\"\nprogram-unit = \"%s\"".formatted(change, unit);
    String toml =
        WALL.formatted(faceUp, machine)
            .replace("diameter = 12\nlength = 30", "diameter = 11\nlength = 30")
            .replace("diameter = 10", "diameter = 5");
    Design.Judged judged = (Design.Judged) Designs.of("bay.toml", toml);
    assertThat(programs(Deliverable.programs(judged))).isNotEmpty();
  }

  /** A mill of 10 mm in 27 mm: the outermost of two rings is 8.5 mm, the floor at 14 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"front", "back"})
  void thatAreNotAsAskedAreRefused(String faceUp) {
    Design.Judged wall = wall(faceUp, "");
    List<OutputFile> files = Deliverable.programs(wall);
    refuses(wall, files, text -> text.replace("Z14.", "Z13.9"), "(recess) goes to Z13.9, not Z14");
    refuses(wall, files, text -> text.replace("Z14.", "Z14.1"), "(recess) goes to Z14.1, not Z14");
    refuses(wall, files, RecessCheckTest::without, "(recess) is not made");
    String x = faceUp.equals("front") ? "2348.5" : "1108.5";
    refuses(
        wall,
        files,
        text -> text.replace("X" + x, "X" + x.replace(".5", ".6")),
        "hole main 10/10 (recess) is not made");
  }

  /** Without the last recess: from its way there to where the tool leaves it. */
  private static String without(String program) {
    int first = program.lastIndexOf("G0 X");
    int end = program.indexOf("G0 Z43.", first);
    return program.substring(0, first) + program.substring(end);
  }
}
