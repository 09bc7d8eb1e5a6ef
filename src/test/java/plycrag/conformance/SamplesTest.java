package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
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

  static Stream<Path> programs() {
    return TestFiles.list(SAMPLES, ".ngc").stream();
  }

  static Stream<Path> pictures() {
    return TestFiles.list(SAMPLES, ".svg").stream();
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void ezdxfFindsNothingToMend(Path drawing) {
    assertThat(EzdxfAudit.complaints(drawing)).isEmpty();
  }

  /** Place, depth and count of what the interpreter drills equal the list's. */
  @ParameterizedTest
  @MethodSource("programs")
  void rs274DrillsTheHolesOfTheList(Path program) {
    List<String> name =
        Pattern.compile("-").splitAsStream(program.getFileName().toString()).toList();
    List<HoleList.Row> rows =
        HoleList.of(program.getParent().getParent()).on(name.get(1), name.get(2));
    List<NgcReader.Hole> holes =
        Rs274.holes(program).stream()
            .sorted(
                Comparator.comparingDouble(NgcReader.Hole::y)
                    .thenComparingDouble(NgcReader.Hole::x))
            .toList();
    List<HoleList.Row> sorted =
        rows.stream()
            .sorted(
                Comparator.comparingDouble(HoleList.Row::y).thenComparingDouble(HoleList.Row::x))
            .toList();
    assertThat(holes).hasSameSizeAs(sorted).isNotEmpty();
    double breakthrough = breakthrough(program);
    for (int at = 0; at < holes.size(); at++) {
      assertThat(holes.get(at).x()).isCloseTo(sorted.get(at).x(), within(0.001));
      assertThat(holes.get(at).y()).isCloseTo(sorted.get(at).y(), within(0.001));
      assertThat(-holes.get(at).bottom()).isCloseTo(breakthrough, within(0.001));
      assertThat(sorted.get(at).depth()).isCloseTo(thickness(program), within(0.001));
    }
  }

  /** Z0 is the spoilboard in the samples: a through hole ends the breakthrough below it. */
  private static double breakthrough(Path program) {
    assertThat(TestFiles.read(program).lines().limit(10)).contains("(Z0 SPOILBOARD)");
    return comment(program, BREAKTHROUGH);
  }

  private static double thickness(Path program) {
    return comment(program, Pattern.compile(".*SHEET ([0-9.]+) THICK.*"));
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
