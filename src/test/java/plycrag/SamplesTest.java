package plycrag;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.app.Plycrag;
import plycrag.files.lint.DxfLint;
import plycrag.files.lint.DxfTags;
import plycrag.files.ngc.NgcReader;
import plycrag.files.ngc.PlainWords;

/** The published samples: made again byte for byte, and of one mind hole by hole. */
class SamplesTest {
  private static final Path GOLDEN = Path.of("out-samples");

  @TempDir private Path out;

  private static int build(Path out, List<Path> files) {
    PrintWriter silent = new PrintWriter(new StringWriter());
    List<String> arguments =
        Stream.concat(
                Stream.of("build", "--out", out.toString()), files.stream().map(Path::toString))
            .toList();
    return new Plycrag(silent, silent).run(arguments.toArray(new String[0]));
  }

  private static int buildAt(String locale, String zone, Path out, List<Path> files) {
    Locale before = Locale.getDefault();
    TimeZone zoneBefore = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      return build(out, files);
    } finally {
      Locale.setDefault(before);
      TimeZone.setDefault(zoneBefore);
    }
  }

  /** Turkish capitals and Arabic digits at once: one locale prints all that could go wrong. */
  @Test
  void areMadeByteForByteAnywhere() throws IOException {
    String zone = "Pacific/Kiritimati";
    assertThat(buildAt("tr-TR-u-nu-arab", zone, out, TestFiles.samples())).isZero();
    assertThat(names(out)).isEqualTo(names(GOLDEN));
    assertAsPublished(out);
  }

  /**
   * Two of them once more, where it is always another day: whatever writes a list, a template or a
   * program at all does so for one of them.
   */
  @Test
  void areMadeByteForByteAgain() throws IOException {
    List<Path> two = List.of(Path.of("params/cox-slab.toml"), Path.of("params/plank-store.toml"));
    assertThat(buildAt("ar-EG-u-nu-arab", "Etc/GMT+12", out, two)).isZero();
    assertThat(names(out.resolve("cox-slab"))).isEqualTo(names(GOLDEN.resolve("cox-slab")));
    assertThat(names(out.resolve("plank-store"))).isEqualTo(names(GOLDEN.resolve("plank-store")));
    assertAsPublished(out);
  }

  private static void assertAsPublished(Path out) throws IOException {
    for (Path file : TestFiles.list(out, "")) {
      Path golden = GOLDEN.resolve(out.relativize(file));
      assertThat(Files.mismatch(file, golden))
          .as("first byte that differs: " + golden)
          .isEqualTo(-1);
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

  /**
   * Where a tool leaves the work is a hole's centre, or on the way round a piece; where it pecks,
   * it does so several times.
   */
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
      NgcReader program = NgcReader.read(PlainWords.of(TestFiles.read(file)));
      assertThat(program.comments())
          .startsWith(program.comments().get(0))
          .contains("Z0 SPOILBOARD");
      boolean cutsOut =
          program.comments().stream().anyMatch(one -> one.matches("(OUTLINES|MARKS|FIRST FACE).*"));
      program.left().stream()
          .map(hole -> sheet + " " + place(hole.x(), hole.y()))
          .filter(place -> !cutsOut || listed.contains(place))
          .filter(place -> made.isEmpty() || !made.get(made.size() - 1).equals(place))
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

  /** No request to anywhere; one script, for ticks, which the page's policy names by its hash. */
  @ParameterizedTest
  @MethodSource("folders")
  void theBookStandsAlone(Path folder) {
    String page = TestFiles.read(folder.resolve("index.html"));
    assertThat(page)
        .doesNotContainPattern(
            "(src|href)=\"(?!#|labels\\.html\"|drawings/drawings\\.pdf\"|build-book\\.pdf\"|model\\.glb\"|checks/structure\\.csv\")")
        .doesNotContain("url(", "@import")
        .containsOnlyOnce("<script>")
        .doesNotContain("<script ", "fetch(", "XMLHttpRequest", "import(")
        .containsPattern(
            "Support (not designed: frame only|set out, its strength not (calculated|approved))")
        .contains("For bouldering only");
    for (String other :
        List.of("labels.html", "drawings/drawings.pdf", "build-book.pdf", "model.glb")) {
      assertThat(page).contains("href=\"" + other + "\"");
      assertThat(folder.resolve(other)).isRegularFile();
    }
    boolean tells = page.contains("href=\"checks/structure.csv\"");
    assertThat(Files.isRegularFile(folder.resolve("checks/structure.csv"))).isEqualTo(tells);
  }
}
