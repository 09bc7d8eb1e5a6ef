package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.HoleList;
import plycrag.TestFiles;
import plycrag.app.Deliverable;
import plycrag.app.Design;
import plycrag.app.Designs;
import plycrag.files.OutputFile;
import plycrag.files.ngc.NgcReader;

/**
 * One sample in every dialect: the interpreter, which knows them all but waits in milliseconds as
 * such, leaves each hole of the list once at its centre, at the bottom that the sheet asks for.
 */
@Tag("conformance")
class DialectsTest {
  private static final double THICKNESS = 18;
  private static final double BREAKTHROUGH = 0.5;
  private static final String MILL =
      "[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\nspeed = 18000\n";
  private static final String PECKING = "[[tool]]\ndiameter = 12\nlength = 30\npeck = 9\n";

  private static final String DRILL = "[[tool]]\ndiameter = 12\nlength = 30\n";
  private static final String RECESSED =
      """
      [[facet]]
      width = 2440
      length = 1220
      [frame]
      stud-spacing = 500
      [inserts]
      pattern = "lines"
      columns = [81, 244]
      rows = [100, 250]
      setback = 80
      recess-depth = 4
      [nesting]
      face-up = "back"
      [machine]
      """;

  @TempDir private Path folder;

  static Stream<String> dialects() {
    return Stream.of(
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
        "arcs = true\n" + MILL,
        "arcs = true\nprogram-unit = \"in\"\ntool-change = \"word\"\n" + MILL,
        "percent-lines = true\nprogram-number = 97\nwork-offset = \"g56\"\n",
        "safe-start = true\npark-x = 500\npark-y = 3000\nline-numbers = true\n",
        "arcs = true\narc-centres = \"from-start\"\nruns-beside = \"m7\"\n" + MILL,
        "arcs = true\narc-centres = \"from-zero\"\nruns-beside = \"m8\"\n" + MILL);
  }

  @ParameterizedTest
  @MethodSource("dialects")
  void everyHoleOfTheListIsMade(String dialect) {
    String text = TestFiles.read(Path.of("params/river-bay.toml")) + "\n[machine]\n" + dialect;
    Design.Judged judged = (Design.Judged) Designs.of("river-bay.toml", text);
    List<OutputFile> files = Deliverable.of(judged);
    HoleList list = list(files);
    double top = dialect.contains("sheet-top") ? 0 : THICKNESS;
    int made = 0;
    for (OutputFile file : files) {
      if (file.path().endsWith(".ngc")) {
        String sheet = file.path().split("-", -1)[1];
        Map<String, Double> bottoms = bottoms(file, dialect);
        assertThat(bottoms.keySet())
            .containsExactlyInAnyOrderElementsOf(
                list.on(sheet, "front").stream().map(row -> key(row, dialect)).toList());
        assertThat(bottoms.values())
            .allMatch(z -> Math.abs(z - (top - THICKNESS - BREAKTHROUGH)) < 0.003);
        made += bottoms.size();
      }
    }
    assertThat(made).isEqualTo(list.rows().size()).isPositive();
  }

  /**
   * A recess is left once in its middle, 4 mm below the top; the hole in its floor goes through.
   */
  @ParameterizedTest
  @MethodSource("dialects")
  void everyRecessOfTheListIsMade(String dialect) {
    String tools = dialect.contains(MILL) ? "" : MILL;
    Design.Judged judged =
        (Design.Judged) Designs.of("bay.toml", RECESSED + dialect + tools + DRILL);
    List<OutputFile> files = Deliverable.of(judged);
    double top = dialect.contains("sheet-top") ? 0 : THICKNESS;
    List<String> made = new ArrayList<>();
    for (OutputFile file : files) {
      if (file.path().endsWith(".ngc")) {
        if (dialect.contains(PECKING)) {
          bottoms(file, dialect).forEach((at, z) -> made.add(at + depth(top - z)));
        } else {
          left(file, dialect)
              .forEach(hole -> made.add(key(hole.x(), hole.y()) + depth(top - hole.bottom())));
        }
      }
    }
    assertThat(made)
        .hasSize(8)
        .containsExactlyInAnyOrderElementsOf(
            list(files).rows().stream()
                .map(row -> key(row, dialect) + depth(row.depth() < 18 ? 4 : 18.5))
                .toList());
  }

  private static String depth(double depth) {
    return " " + Math.round(depth * 100);
  }

  /** Where the interpreter leaves the work, mm. */
  private List<NgcReader.Hole> left(OutputFile file, String dialect) {
    Path program = folder.resolve("test.ngc");
    Tools.write(program, text(file));
    double unit = dialect.contains("program-unit") ? 25.4 : 1;
    return Rs274.left(program, unit == 1 ? "MM" : "INCHES").stream()
        .map(hole -> new NgcReader.Hole(hole.x() * unit, hole.y() * unit, hole.bottom() * unit))
        .toList();
  }

  /** Where the interpreter leaves the work, and how deep; inches have four digits. */
  private Map<String, Double> bottoms(OutputFile file, String dialect) {
    Map<String, Double> bottoms = new TreeMap<>();
    for (NgcReader.Hole left : left(file, dialect)) {
      bottoms.merge(key(left.x(), left.y()), left.bottom(), Math::min);
    }
    return bottoms;
  }

  /** To the hundredth, which four digits of an inch tell. */
  private static String key(double x, double y) {
    return Math.round(x * 100) + "/" + Math.round(y * 100);
  }

  private static String key(HoleList.Row row, String dialect) {
    boolean upperRight = dialect.contains("upper-right");
    return upperRight ? key(row.x() - 2440, row.y() - 1220) : key(row.x(), row.y());
  }

  private static HoleList list(List<OutputFile> files) {
    return HoleList.of(
        new StringReader(
            files.stream()
                .filter(file -> file.path().equals("lists/holes.csv"))
                .map(DialectsTest::text)
                .findFirst()
                .orElseThrow()));
  }

  private static String text(OutputFile file) {
    return new String(file.content(), StandardCharsets.UTF_8);
  }
}
