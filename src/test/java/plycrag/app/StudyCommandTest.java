package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.TestFiles;
import plycrag.files.lint.SvgLint;
import plycrag.stock.JobFigures;

/** Variants of a wall, and two walls side by side. */
class StudyCommandTest {
  private static final String WALL =
      """
      [wall]
      width = 1200 # as the sheet is
      [[facet]]
      angle = 20
      length = 1200
      [inserts]
      pitch-across = 250
      """;

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true)).run(arguments);
  }

  private String file(String name, String toml) throws IOException {
    return Files.writeString(folder.resolve(name), toml).toString();
  }

  private int study(String... vary) throws IOException {
    String made = folder.resolve("made").toString();
    return vary.length == 1
        ? run("study", file("slipway.toml", WALL), "--out", made, "--vary", vary[0])
        : run(
            "study",
            file("slipway.toml", WALL),
            "--out",
            made,
            "--vary",
            vary[0],
            "--vary",
            vary[1]);
  }

  /** Each row is what a check of that very file counts. */
  @Test
  void everyRowIsTheWallThatItsValuesMake() throws IOException {
    assertThat(study("facet.angle=0:20:10", "frame.stud-spacing=300:600:300")).isZero();
    List<String> rows =
        TestFiles.read(folder.resolve("made/slipway-study/study.csv")).lines().toList();
    assertThat(rows).hasSize(1 + 3 * 2);
    assertThat(rows.get(0)).startsWith("facet.angle,frame.stud-spacing,cost,mass_kg,inserts,");
    assertThat(rows.get(4)).startsWith("10,600,,");
    Design.Judged judged =
        (Design.Judged)
            Designs.of(
                "x.toml",
                WALL.replace("angle = 20", "angle = 10") + "[frame]\nstud-spacing = 600\n");
    Tally tally = Tally.of(judged);
    assertThat(rows.get(4).split(",", -1)[4]).isEqualTo("" + tally.counts().inserts());
    assertThat(Double.parseDouble(rows.get(4).split(",", -1)[3]))
        .isCloseTo(tally.mass(), org.assertj.core.api.Assertions.within(0.051));
    assertThat(rows.get(3).split(",", -1)[3]).isNotEqualTo(rows.get(4).split(",", -1)[3]);
  }

  @Test
  void thePageHasTheTableAndTwoPlots() throws IOException {
    assertThat(study("inserts.pitch-across=200:300:50")).isZero();
    Path made = folder.resolve("made/slipway-study");
    assertThat(TestFiles.list(made, ".svg"))
        .hasSize(2)
        .allSatisfy(plot -> assertThat(SvgLint.faults(TestFiles.read(plot))).isEmpty());
    assertThat(TestFiles.read(made.resolve("index.html")))
        .contains("3 variants, 3 of which may be made", "inserts.pitch-across", "<svg");
    assertThat(made.resolve("manifest.json")).exists();
  }

  @Test
  void aVariantThatIsNoWallSaysWhyAndTheOthersAreTried() throws IOException {
    assertThat(study("facet.angle=80:100:10")).isZero();
    assertThat(TestFiles.read(folder.resolve("made/slipway-study/study.csv")))
        .contains("\n100,,,,,,,,,,,,wrong: 100 degrees is too great");
    assertThat(study("facet.angel=20:40:10")).isEqualTo(2);
    assertThat(err.toString()).contains("the nearest known key is facet.angle");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"angle=1:2:1", "facet.angle=1:2", "facet.angle=2:1:1", "facet.angle=1:2:0"})
  void whatIsNoRangeIsWrongUsage(String vary) throws IOException {
    assertThat(study(vary)).isEqualTo(2);
    assertThat(err.toString()).contains("plycrag: " + vary);
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void valuesAreSpelledAsTheirStepsAre() {
    assertThat(Vary.of("facet[2].length=1:2:0.25").values())
        .containsExactly("1", "1.25", "1.50", "1.75", "2.00");
    assertThat(Vary.of("facet[2].length=1:2:0.25").name()).isEqualTo("facet[2].length");
    assertThatThrownBy(() -> Vary.of("facet.angle=0:90:0.01")).hasMessageContaining("more than");
  }

  @Test
  void aValueReplacesTheOneThatStandsThereOrComesIn() {
    EditedText text =
        new EditedText("[[facet]]\nangle = 1 # one\n[[facet]]\n# angle = 7\nwidth = 9\n");
    Vary second = Vary.of("facet[2].angle=5:5:1");
    assertThat(text.with(Vary.of("facet.angle=5:5:1"), "5").text())
        .isEqualTo("[[facet]]\nangle = 5\n[[facet]]\n# angle = 7\nwidth = 9\n");
    assertThat(text.with(second, "5").text())
        .isEqualTo("[[facet]]\nangle = 1 # one\n[[facet]]\nangle = 5\n# angle = 7\nwidth = 9\n");
    assertThat(text.with(Vary.of("room.front=5:5:1"), "5").text()).endsWith("[room]\nfront = 5\n");
  }

  private static Tally tally(String cost, double mass, int inserts, int sheets, int sticks) {
    return new Tally(
        Optional.of(cost).filter(one -> !one.isEmpty()).map(BigDecimal::new),
        mass,
        1,
        1,
        new JobFigures.Waste(0, 0),
        new Tally.Counts(inserts, sheets, sticks, 1, 1),
        0,
        0,
        Optional.empty());
  }

  @Test
  void beatenIsWhatIsNowhereBetterAndSomewhereWorse() {
    Tally usual = tally("10.00", 5, 30, 2, 3);
    assertThat(tally("9.99", 5, 30, 2, 3).beats(usual)).isTrue();
    assertThat(tally("9.99", 5, 29, 2, 3).beats(usual)).isFalse();
    assertThat(tally("10.0", 5, 30, 2, 3).beats(usual)).isFalse();
    assertThat(tally("", 4, 31, 2, 3).beats(usual)).isTrue();
    assertThat(tally("", 6, 31, 2, 3).beats(usual)).isFalse();
  }

  /** The sample's own list, read by itself, has the same largest utilisation and failing lines. */
  @Test
  void whatIsToldOfStrengthIsWhatItsListSays() throws IOException {
    String list = TestFiles.read(Path.of("out-samples/tide-gate/checks/structure.csv"));
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<CSVRecord> lines = CSVParser.parse(list, format).getRecords();
    double largest =
        lines.stream()
            .map(line -> line.get("utilisation"))
            .filter(one -> !one.isEmpty())
            .mapToDouble(Double::parseDouble)
            .max()
            .orElseThrow();
    long failing = lines.stream().filter(line -> line.get("status").equals("fails")).count();
    assertThat(failing).isPositive();
    assertThat(run("compare", "params/tide-gate.toml", file("slipway.toml", WALL))).isZero();
    assertThat(out.toString())
        .containsPattern("strength, largest utilisation +" + largest + " +not reckoned")
        .containsPattern("strength, lines that fail +" + failing + " +not reckoned");
  }

  @Test
  void compareTellsWhatDiffers() throws IOException {
    String other = WALL.replace("1200", "2400");
    assertThat(run("compare", file("one.toml", WALL), file("two.toml", other))).isZero();
    assertThat(out.toString()).containsPattern("climbing face, m2 +1\\.44 +5\\.7");
    assertThat(out.toString()).contains("To buy, where it differs:", "structural plywood");
    out.getBuffer().setLength(0);
    assertThat(run("compare", file("one.toml", WALL), file("same.toml", WALL))).isZero();
    assertThat(out.toString()).contains("To buy: the same.");
    assertThat(run("compare", file("one.toml", WALL), "none.toml")).isEqualTo(3);
  }
}
