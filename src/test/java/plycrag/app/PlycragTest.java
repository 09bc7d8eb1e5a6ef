package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plycrag.TestFiles;

/** The command line: verbs, exit codes, what is written and what is not. */
class PlycragTest {
  private static final String GOOD = "[wall]\nname = \"Slipway\"\n[[facet]]\nlength = 1200\n";

  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true)).run(arguments);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private String refused() {
    return TestFiles.text("must-fail/layout/top-row-in-plate.toml");
  }

  private String build(String name, String text) throws IOException {
    Path file = file(name, text);
    return "" + run("build", file.toString(), "--out", folder.resolve("made").toString());
  }

  @Test
  void buildMakesAFolderNamedAfterTheFile() throws IOException {
    assertThat(build("slipway.toml", dropping(GOOD))).isEqualTo("0");
    assertThat(folder.resolve("made/slipway"))
        .isDirectoryContaining("glob:**/index.html")
        .isDirectoryContaining("glob:**/manifest.json")
        .isDirectoryContaining("glob:**/cnc");
    assertThat(out.toString()).contains("Slipway: ", "Wrote ", "Not checked: ");
  }

  private static String dropping(String text) {
    return text + "[inserts]\nwhen-blocked = \"drop\"\n";
  }

  @Test
  void aRefusedWallGetsDrawingsAndABookButNoProgram() throws IOException {
    assertThat(build("rack.toml", refused())).isEqualTo("1");
    Path made = folder.resolve("made/rack");
    assertThat(made.resolve("cnc")).doesNotExist();
    assertThat(TestFiles.list(made, ".ngc")).isEmpty();
    assertThat(TestFiles.read(made.resolve("index.html"))).contains("NOT FOR MAKING");
    List<Path> drawings = new ArrayList<>(TestFiles.list(made, ".dxf"));
    drawings.addAll(TestFiles.list(made, ".svg"));
    assertThat(drawings)
        .hasSize(21)
        .allSatisfy(drawing -> assertThat(TestFiles.read(drawing)).contains("NOT FOR MAKING"));
    assertThat(TestFiles.read(made.resolve("checks/clearance.csv")).lines()).hasSize(6);
  }

  @Test
  void aWrongFileIsToldWhereAndNothingIsWritten() throws IOException {
    assertThat(build("slipway.toml", GOOD + "widht = 1200\n")).isEqualTo("2");
    assertThat(err.toString()).contains("slipway.toml:5:1: facet[1].widht: ");
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void checkFindsTheSameAndWritesNothing() throws IOException {
    Path file = file("rack.toml", refused());
    assertThat(run("check", file.toString())).isEqualTo(1);
    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .startsWith(file + ": error: ")
        .contains("(5 times: main 10/235, main 30/235, main 56/235 and 2 more); ");
    assertThat(TestFiles.list(folder, "")).containsExactly(file);
  }

  @Test
  void checkEndsWithWhatIsBoughtAndCarried() throws IOException {
    Files.createDirectories(folder.resolve("lists"));
    file("lists/spring.csv", "article,unit,price,currency\nsheet,piece,60,EUR\n");
    assertThat(run("check", file("slipway.toml", dropping(GOOD)).toString())).isZero();
    assertThat(out.toString())
        .contains(" m2 to climb on, ", " kg of sheets and timber as built, the longest to carry ")
        .contains("No price is told: [stock] prices names a list.");
    assertThat(run("check", file("slipway.toml", PRICED).toString())).isZero();
    assertThat(out.toString()).containsPattern("Costs [0-9]+\\.00 EUR and what [0-9]+ articles ");
    out.getBuffer().setLength(0);
    assertThat(run("check", "-q", file("slipway.toml", PRICED).toString())).isZero();
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void theHighestCodeWins() throws IOException {
    Path good = file("slipway.toml", dropping(GOOD));
    Path bad = file("rack.toml", refused());
    Path missing = folder.resolve("missing.toml");
    assertThat(run("check", good.toString(), bad.toString())).isEqualTo(1);
    assertThat(run("check", bad.toString(), missing.toString(), good.toString())).isEqualTo(3);
    assertThat(err.toString()).contains("missing.toml: there is no such file");
  }

  /** The next file is taken whatever became of this one. */
  @Test
  void aDefectNamesItsFile() throws IOException {
    Path good = file("slipway.toml", dropping(GOOD));
    PrintWriter told = new PrintWriter(err, true);
    Job job = Job.checking(new Source(good), Terminal.unattended(new PrintWriter(out, true), told));
    int code =
        job.run(
            (design, inputs) -> {
              throw new IllegalStateException("no length");
            });
    assertThat(code).isEqualTo(70);
    assertThat(err.toString())
        .startsWith(good + ": a defect of the program, not of your file.")
        .contains("IllegalStateException: no length");
  }

  @Test
  void aFolderThatIsNotOursIsLeftAlone() throws IOException {
    Path own = Files.createDirectories(folder.resolve("made/slipway"));
    Files.writeString(own.resolve("diary.txt"), "rain again");
    assertThat(build("slipway.toml", dropping(GOOD))).isEqualTo("3");
    assertThat(err.toString()).contains("diary.txt");
    assertThat(TestFiles.list(folder.resolve("made"), ""))
        .containsExactly(own.resolve("diary.txt"));
  }

  @Test
  void aSecondBuildTakesTheFirstOnesPlace() throws IOException {
    assertThat(build("slipway.toml", dropping(GOOD))).isEqualTo("0");
    assertThat(build("slipway.toml", refused())).isEqualTo("1");
    assertThat(folder.resolve("made/slipway/cnc")).doesNotExist();
    assertThat(folder.resolve("made")).isDirectoryNotContaining("glob:**/.slipway*");
  }

  private static final String PRICED =
      GOOD + "[inserts]\nwhen-blocked = \"drop\"\n[stock]\nprices = \"lists/spring.csv\"\n";

  @Test
  void thePriceListIsReadFromBesideTheParameterFileAndHashed() throws IOException {
    Files.createDirectories(folder.resolve("lists"));
    file("lists/spring.csv", "article,unit,price,currency\nsheet,piece,60,EUR\n");
    assertThat(build("slipway.toml", PRICED)).isEqualTo("0");
    Path made = folder.resolve("made/slipway");
    String first = TestFiles.read(made.resolve("manifest.json"));
    assertThat(first).contains("\"prices\":{\"file\":\"spring.csv\",\"sha256\":");
    assertThat(TestFiles.read(made.resolve("lists/shopping.csv"))).contains(",60.00,EUR,");
    file("lists/spring.csv", "article,unit,price,currency\nsheet,piece,60,EUR\n# same\n");
    assertThat(build("slipway.toml", PRICED)).isEqualTo("0");
    assertThat(TestFiles.read(made.resolve("manifest.json"))).isNotEqualTo(first);
  }

  @Test
  void aWrongPriceListIsToldWhereAndAMissingOneByName() throws IOException {
    assertThat(build("slipway.toml", PRICED)).isEqualTo("3");
    assertThat(err.toString()).contains("spring.csv: there is no such file");
    Files.createDirectories(folder.resolve("lists"));
    file("lists/spring.csv", "article,unit,price,currency\nsheet,piece,sixty,euro\n");
    assertThat(build("slipway.toml", PRICED)).isEqualTo("2");
    assertThat(err.toString()).contains("spring.csv:2:13: price: ", "spring.csv:2:19: currency: ");
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void twoFilesOfOneNameAreRefused() throws IOException {
    Files.createDirectories(folder.resolve("other"));
    Path one = file("slipway.toml", GOOD);
    Path other = file("other/slipway.toml", GOOD);
    assertThat(run("build", one.toString(), other.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("two files would both make");
  }

  @Test
  void wrongUsageSaysWhatWasProbablyMeant() {
    assertThat(run("build", "--uot", "x", "wall.toml")).isEqualTo(2);
    assertThat(err.toString()).contains("--uot", "The nearest known is --out");
    assertThat(run("biuld")).isEqualTo(2);
    assertThat(err.toString()).contains("The nearest known is build");
    assertThat(run()).isEqualTo(2);
    assertThat(run("build")).isEqualTo(2);
  }

  @Test
  void withoutArgumentsTheVerbsAreShown() {
    assertThat(run()).isEqualTo(2);
    assertThat(err.toString()).startsWith("Usage: plycrag").contains("new ", "check ", "build ");
  }

  @Test
  void standardInputIsAParameterFileWithoutAName() {
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(TestFiles.bytes("[[facet]]\nwidht = 1200\n")),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            false);
    assertThat(new Plycrag(terminal).run("check", "-")).isEqualTo(2);
    assertThat(err.toString()).startsWith("standard-input:2:1: facet[1].widht: ");
    assertThat(run("check", "-", "-")).isEqualTo(2);
    assertThat(err.toString()).contains("standard input can be read once only");
  }

  @Test
  void helpVersionSchemaAndReferencePrintToOut() {
    assertThat(run("--version")).isZero();
    assertThat(run("version")).isZero();
    assertThat(run("--help")).isZero();
    assertThat(run("help", "build")).isZero();
    assertThat(run("reference")).isZero();
    assertThat(run("schema")).isZero();
    assertThat(out.toString())
        .containsPattern("(plycrag [0-9]+\\.[0-9]+\\.[0-9]+\\R){2}")
        .contains("Exit codes:", "when-blocked", "--out", "draft-07");
    assertThat(err.toString()).isEmpty();
  }
}
