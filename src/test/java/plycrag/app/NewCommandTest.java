package plycrag.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.TestFiles;
import plycrag.read.ParameterFile;
import plycrag.read.ParameterSchema;
import plycrag.read.Parameters;
import plycrag.units.LengthUnit;

/** Files to start from. */
class NewCommandTest {
  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return new Plycrag(new PrintWriter(out, true), new PrintWriter(err, true)).run(arguments);
  }

  private int answering(String typed, String... arguments) {
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(TestFiles.bytes(typed)),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            true);
    return new Plycrag(terminal).run(arguments);
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private Parameters written(String name) {
    Path file = folder.resolve(name);
    return ParameterFile.read(name, TestFiles.content(file)).value().orElseThrow();
  }

  static Stream<Arguments> starters() {
    return Arrays.stream(Starter.values())
        .flatMap(
            starter -> Arrays.stream(LengthUnit.values()).map(unit -> Arguments.of(starter, unit)));
  }

  /** As it stands, in both units, and with what is asked for in its place. */
  @ParameterizedTest
  @MethodSource("starters")
  void everyStarterMayBeMadeAsItStands(Starter starter, LengthUnit unit) {
    String text = starter.text(unit).text();
    assertThat(text).startsWith("#:schema ./" + NewCommand.SCHEMA + "\n");
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
    Design design = Designs.of("start.toml", text);
    assertThat(design)
        .isInstanceOfSatisfying(
            Design.Judged.class,
            judged -> assertThat(judged.checked().isApproved()).as(starter + " " + unit).isTrue());
  }

  @ParameterizedTest
  @MethodSource("starters")
  void everyAnswerStandsWhereItIsMeant(Starter starter, LengthUnit unit) {
    StarterText text = starter.text(unit).with("name", "Loft").with("width", "3 m");
    Parameters told =
        ParameterFile.read(
                "x.toml", TestFiles.bytes(text.withAngle("-3").with("ceiling", "4 m").text()))
            .value()
            .orElseThrow();
    assertThat(told.wall().name()).isEqualTo("Loft");
    assertThat(told.wall().unit()).isEqualTo(unit);
    assertThat(told.facets()).allSatisfy(one -> assertThat(one.width()).isEqualTo(3000));
    assertThat(told.facets())
        .filteredOn(one -> one.name().equals("main") || one.name().equals("right"))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one.angle()).isEqualTo(-3));
    assertThat(text.text()).contains("# printed on everything");
  }

  @Test
  void writesAFileWithItsSchemaAndNeverOverAnother() throws IOException {
    assertThat(run("new", path("river-attic"), "--like", "Slab", "--width", "8' 4\"")).isZero();
    assertThat(written("river-attic.toml").wall().name()).isEqualTo("River attic");
    assertThat(written("river-attic.toml").facets().get(0).width()).isEqualTo(2540);
    assertThat(TestFiles.read(folder.resolve(NewCommand.SCHEMA))).isEqualTo(ParameterSchema.json());
    assertThat(out.toString()).contains("Next: plycrag view ");
    String before = TestFiles.read(folder.resolve("river-attic.toml"));
    assertThat(run("new", path("river-attic.toml"))).isEqualTo(3);
    assertThat(err.toString()).contains("there is such a file already; it is left as it is");
    assertThat(TestFiles.read(folder.resolve("river-attic.toml"))).isEqualTo(before);
  }

  @Test
  void aSchemaThatIsThereIsLeft() throws IOException {
    Files.writeString(folder.resolve(NewCommand.SCHEMA), "{}");
    assertThat(run("new", path("attic"))).isZero();
    assertThat(out.toString()).contains("as it is, which is not this version's");
    assertThat(TestFiles.read(folder.resolve(NewCommand.SCHEMA))).isEqualTo("{}");
  }

  @ParameterizedTest
  @CsvSource({"--width,1 mm,wall.width: 1 mm is too small", "--angle,steep,facet[1].angle: a text"})
  void aWrongAnswerIsToldAsTheReaderTellsIt(String option, String value, String told) {
    assertThat(run("new", path("attic"), option, value)).isEqualTo(2);
    assertThat(err.toString()).contains("plycrag: " + told, "Usage: plycrag new");
    assertThat(TestFiles.list(folder, "")).isEmpty();
  }

  @Test
  void aFolderThatIsNotThereIsToldOf() {
    assertThat(run("new", path("none/attic"))).isEqualTo(3);
    assertThat(err.toString()).contains("attic.toml: there is no such folder");
  }

  @Test
  void asksAtATerminalAndAsksAgainWhereItMust() {
    assertThat(answering("bridge\ncave\nin\n5\n9 ft\n\n120\n", "new", path("attic"))).isZero();
    assertThat(out.toString())
        .contains("One of leaning, cave,", "wall.width: 5 in is too small", "Wrote ");
    Parameters told = written("attic.toml");
    assertThat(told.wall().unit()).isEqualTo(LengthUnit.IN);
    assertThat(told.facets()).hasSize(3);
    assertThat(told.facets().get(0).width()).isEqualTo(2743.2);
    assertThat(told.room().ceiling().height()).contains(3048.0);
  }

  @Test
  void asksNothingWhereAnOptionAnswersOrNobodySits() {
    assertThat(answering("", "new", path("attic"), "--like=hall")).isZero();
    assertThat(run("new", path("loft"))).isZero();
    assertThat(out.toString()).doesNotContain("?", "Width of the wall");
  }

  /** Whoever ends the input has answered nothing more. */
  @Test
  void anEndOfInputKeepsTheStarter() {
    assertThat(answering("", "new", path("attic"))).isZero();
    assertThat(written("attic.toml").wall().name()).isEqualTo("Attic");
  }
}
