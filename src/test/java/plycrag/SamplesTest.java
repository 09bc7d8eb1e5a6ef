package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.app.Plycrag;
import plycrag.files.lint.DxfLint;
import plycrag.files.lint.DxfTags;
import plycrag.files.ngc.NgcReader;

/** The published samples: made again byte for byte, and of one mind hole by hole. */
class SamplesTest {
  private static final Path GOLDEN = Path.of("out-samples");

  @TempDir private Path out;

  private static int build(Path out) {
    PrintWriter silent = new PrintWriter(new StringWriter());
    List<String> arguments =
        Stream.concat(
                Stream.of("build", "--out", out.toString()),
                TestFiles.samples().stream().map(Path::toString))
            .toList();
    return new Plycrag(silent, silent).run(arguments.toArray(new String[0]));
  }

  /**
   * Locales that print numbers, digits and capitals otherwise; time zones more than a day apart.
   */
  @ParameterizedTest
  @CsvSource({"tr-TR,Etc/GMT+12", "ar-EG-u-nu-arab,Pacific/Kiritimati"})
  void areMadeByteForByteAnywhere(String locale, String zone) {
    Locale before = Locale.getDefault();
    TimeZone zoneBefore = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(build(out)).isZero();
    } finally {
      Locale.setDefault(before);
      TimeZone.setDefault(zoneBefore);
    }
    assertThat(names(out)).isEqualTo(names(GOLDEN));
    for (Path file : TestFiles.list(out, "")) {
      assertThat(file).hasSameBinaryContentAs(GOLDEN.resolve(out.relativize(file)));
    }
  }

  private static List<String> names(Path folder) {
    return TestFiles.list(folder, "").stream()
        .map(file -> folder.relativize(file).toString())
        .toList();
  }

  @Test
  void thereAreTwoOfThemAtLeast() {
    assertThat(TestFiles.samples()).hasSizeGreaterThanOrEqualTo(2);
  }

  static List<Path> folders() {
    return TestFiles.samples().stream()
        .map(file -> GOLDEN.resolve(file.getFileName().toString().replace(".toml", "")))
        .toList();
  }

  /** Where a tool leaves the work is a hole's centre, or on the way round a piece. */
  @ParameterizedTest
  @MethodSource("folders")
  void programsDrillTheHolesOfTheList(Path folder) {
    List<String> made = new ArrayList<>();
    List<String> listed =
        HoleList.of(folder).rows().stream()
            .map(row -> row.sheet() + " " + place(row.x(), row.y()))
            .toList();
    for (Path file : TestFiles.list(folder.resolve("cnc"), ".ngc")) {
      String sheet = file.getFileName().toString().split("-", -1)[1];
      NgcReader program = NgcReader.read(TestFiles.read(file));
      assertThat(program.comments())
          .startsWith(program.comments().get(0))
          .contains("Z0 SPOILBOARD");
      boolean cutsOut =
          program.comments().stream().anyMatch(one -> one.matches("(OUTLINES|MARKS|FIRST FACE).*"));
      program.left().stream()
          .map(hole -> sheet + " " + place(hole.x(), hole.y()))
          .filter(place -> !cutsOut || listed.contains(place))
          .forEach(made::add);
    }
    assertThat(made).isNotEmpty().containsExactlyInAnyOrderElementsOf(listed);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void drawingsForCuttingShowTheHolesOfTheList(Path folder) {
    HoleList list = HoleList.of(folder);
    int drawn = 0;
    for (Path file : TestFiles.list(folder.resolve("drawings"), ".dxf")) {
      String[] name = file.getFileName().toString().replace(".dxf", "").split("-", -1);
      if (name[0].equals("sheet")) {
        DxfTags drawing = DxfTags.read(TestFiles.read(file));
        assertThat(drawing.circles().stream().map(one -> hole(one.x(), one.y(), 2 * one.radius())))
            .containsExactlyInAnyOrderElementsOf(
                list.on(name[1], name[2]).stream()
                    .map(row -> hole(row.x(), row.y(), row.diameter()))
                    .toList());
        assertThat(drawing.polylines()).anyMatch(DxfTags.Polyline::closed);
        drawn += drawing.circles().size();
      }
    }
    assertThat(drawn).isEqualTo(list.rows().size()).isPositive();
  }

  private static String hole(double x, double y, double diameter) {
    return place(x, y) + " " + Math.round(diameter * 1000);
  }

  private static String place(double x, double y) {
    return Math.round(x * 1000) + "/" + Math.round(y * 1000);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void drawingsPassTheLinter(Path folder) {
    List<Path> drawings = TestFiles.list(folder, ".dxf");
    assertThat(drawings).isNotEmpty();
    for (Path drawing : drawings) {
      assertThat(DxfLint.faults(TestFiles.read(drawing))).as(drawing.toString()).isEmpty();
    }
  }

  /** No request to anywhere, no script. */
  @ParameterizedTest
  @MethodSource("folders")
  void theBookStandsAlone(Path folder) {
    String page = TestFiles.read(folder.resolve("index.html"));
    assertThat(page)
        .doesNotContainPattern(
            "(src|href)=\"(?!#|labels\\.html\"|drawings/drawings\\.pdf\"|build-book\\.pdf\")")
        .doesNotContain("<script", "url(", "@import")
        .containsPattern("Support (not designed: frame only|set out, its strength not calculated)")
        .contains("For bouldering only");
    for (String other : List.of("labels.html", "drawings/drawings.pdf", "build-book.pdf")) {
      assertThat(page).contains("href=\"" + other + "\"");
      assertThat(folder.resolve(other)).isRegularFile();
    }
  }
}
