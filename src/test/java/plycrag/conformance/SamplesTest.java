package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.HoleList;
import plycrag.TestFiles;
import plycrag.files.ngc.NgcReader;

/** Holds every file of every sample against programs that are not ours. */
@Tag("conformance")
class SamplesTest {
  private static final Path SAMPLES = Path.of("out-samples");
  private static final Pattern SIZE =
      Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");
  private static final Pattern BREAKTHROUGH = Pattern.compile(".*BREAKTHROUGH ([0-9.]+).*");

  @TempDir private Path scratch;

  static Stream<Path> drawings() {
    return TestFiles.list(SAMPLES, ".dxf").stream();
  }

  static Stream<Path> pictures() {
    return TestFiles.list(SAMPLES, ".svg").stream();
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void ezdxfFindsNothingToMend(Path drawing) {
    assertThat(EzdxfAudit.complaints(drawing)).isEmpty();
  }

  static Stream<Path> folders() {
    return TestFiles.samples().stream()
        .map(file -> SAMPLES.resolve(file.getFileName().toString().replace(".toml", "")));
  }

  /**
   * Place, depth and count of what the interpreter drills or bores equal the list's; what goes
   * through, into the board for pins too, goes on by the breakthrough. What it leaves elsewhere it
   * cuts on its way round a piece; {@link OutlinesTest} looks at that.
   */
  @ParameterizedTest
  @MethodSource("folders")
  void rs274MakesTheHolesOfTheList(Path folder) {
    List<String> listed =
        HoleList.of(folder).rows().stream()
            .map(row -> row.sheet() + " " + place(row.x(), row.y()) + depth(row.depth()))
            .toList();
    List<String> made = new ArrayList<>();
    for (Path program : TestFiles.list(folder.resolve("cnc"), ".ngc")) {
      String sheet = program.getFileName().toString().split("-", -1)[1];
      boolean cutsOut = TestFiles.read(program).matches("(?s).*\\((OUTLINES|MARKS|FIRST FACE).*");
      for (NgcReader.Hole hole : Rs274.left(program, "MM")) {
        double depth = thickness(program) - hole.bottom();
        boolean through = depth > thickness(program);
        double asked = through ? depth - breakthrough(program) : depth;
        String one = sheet + " " + place(hole.x(), hole.y()) + depth(asked);
        if (!cutsOut || listed.contains(one)) {
          made.add(one);
        }
      }
    }
    assertThat(made).isNotEmpty().containsExactlyInAnyOrderElementsOf(listed);
  }

  private static String depth(double depth) {
    return " " + Math.round(depth * 100);
  }

  private static String place(double x, double y) {
    return Math.round(x * 1000) + "/" + Math.round(y * 1000);
  }

  /** Z0 is the spoilboard in the samples: a through hole ends the breakthrough below it. */
  private static double breakthrough(Path program) {
    assertThat(TestFiles.read(program).lines().limit(10)).contains("(Z0 SPOILBOARD)");
    return comment(program, BREAKTHROUGH);
  }

  private static double thickness(Path program) {
    return comment(program, Pattern.compile("\\(STOCK .* ([0-9.]+) THICK\\)"));
  }

  private static double comment(Path program, Pattern pattern) {
    return TestFiles.read(program)
        .lines()
        .map(pattern::matcher)
        .filter(Matcher::matches)
        .mapToDouble(match -> Double.parseDouble(match.group(1)))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void rsvgMakesThePageThatTheFileStates(Path picture) throws IOException {
    Path copy = Files.copy(picture, scratch.resolve(picture.getFileName()));
    Matcher stated = SIZE.matcher(TestFiles.read(picture));
    assertThat(stated.find()).isTrue();
    SvgPage.Size page = SvgPage.size(copy);
    assertThat(page.width()).isCloseTo(Double.parseDouble(stated.group(1)), within(0.05));
    assertThat(page.height()).isCloseTo(Double.parseDouble(stated.group(2)), within(0.05));
  }

  /** A true-size drawing's page is the stock sheet. */
  @Test
  void aSheetsPageIsTheSheet() throws IOException {
    Path picture = SAMPLES.resolve("river-bay/drawings/sheet-S1-front.svg");
    Path copy = Files.copy(picture, scratch.resolve("sheet.svg"));
    SvgPage.Size page = SvgPage.size(copy);
    assertThat(page.width()).isCloseTo(2440, within(0.05));
    assertThat(page.height()).isCloseTo(1220, within(0.05));
  }
}
