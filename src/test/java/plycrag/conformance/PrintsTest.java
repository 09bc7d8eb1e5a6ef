package plycrag.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plycrag.HoleList;
import plycrag.TestFiles;

/** Poppler reads the samples' prints: sizes, words, and what a ruler would measure on paper. */
@Tag("conformance")
class PrintsTest {
  private static final Path SAMPLES = Path.of("out-samples");
  private static final Path TILES = SAMPLES.resolve("eaves-nook/templates/sheet-S2.pdf");
  private static final Pattern BOX =
      Pattern.compile("Page +\\d+ (Media|Crop|Trim)Box: +0.00 +0.00 +(\\S+) +(\\S+)");
  private static final double PEN = 0.35;

  /** Points of the papers, to the hundredth: ISO 216 and inches of 72 points. */
  private static final Set<String> PAPERS =
      Set.of(
          "595.28 841.89",
          "841.89 595.28",
          "1190.55 841.89",
          "2383.94 1683.78",
          "3370.39 2383.94",
          "2448.00 1584.00",
          "1683.78 1190.55",
          "612.00 792.00",
          "792.00 612.00",
          "1224.00 792.00",
          "1584.00 1224.00");

  static List<Path> prints() {
    return TestFiles.list(SAMPLES, ".pdf");
  }

  @ParameterizedTest
  @MethodSource("prints")
  void everyBoxOfEveryPageIsAPaper(Path pdf) {
    String told = Tools.output("pdfinfo", "-box", "-f", "1", "-l", "999", absolute(pdf));
    Matcher boxes = BOX.matcher(told);
    int count = 0;
    while (boxes.find()) {
      assertThat(PAPERS).contains(boxes.group(2) + " " + boxes.group(3));
      count++;
    }
    assertThat(count).isPositive();
    assertThat(count % 3).isZero();
  }

  @ParameterizedTest
  @MethodSource("prints")
  void everyPageCanBeSearchedAndSaysWhatItIsFor(Path pdf) {
    String[] pages = Tools.output("pdftotext", "-layout", absolute(pdf), "-").split("\f", -1);
    for (int page = 0; page + 1 < pages.length; page++) {
      assertThat(pages[page]).contains("bouldering only").contains("No rope");
    }
  }

  /** Columns of pdffonts: name, type, encoding, then emb, sub and uni. */
  @ParameterizedTest
  @MethodSource("prints")
  void itsFontLiesInTheFile(Path pdf) {
    List<String> fonts =
        Tools.output("pdffonts", absolute(pdf)).lines().skip(2).map(String::strip).toList();
    assertThat(fonts)
        .hasSize(1)
        .allMatch(font -> font.matches(".*LiberationSans.* yes yes yes .*"));
  }

  /** The strokes' own ticks make them a pen's breadth longer. */
  @Test
  void theBarsMeasureWhatTheySay() {
    List<Double> strokes = PdfPage.of(TILES, 1).strokes(80);
    assertThat(strokes).anyMatch(length -> Math.abs(length - PEN - 100) < 0.1);
    assertThat(strokes).anyMatch(length -> Math.abs(length - PEN - 101.6) < 0.1);
    assertThat(PdfPage.of(TILES, 2).strokes(80))
        .anyMatch(length -> Math.abs(length - PEN - 100) < 0.1);
  }

  /**
   * The little crosses of one tile, above its words, lie to each other as the holes of the list do.
   */
  @Test
  void holesOnATileLieAsInTheList() {
    List<PdfPage.Blot> crosses =
        PdfPage.of(TILES, 2).blots().stream()
            .filter(PrintsTest::isCross)
            .filter(cross -> cross.y() < 260)
            .toList();
    assertThat(crosses).hasSizeGreaterThanOrEqualTo(2);
    HoleList holes = HoleList.of(SAMPLES.resolve("eaves-nook"));
    Set<Integer> matches = new HashSet<>();
    List<HoleList.Row> sheet = holes.on("S2", "front");
    for (int first = 0; first < sheet.size(); first++) {
      HoleList.Row origin = sheet.get(first);
      PdfPage.Blot start = crosses.get(0);
      boolean fits =
          crosses.stream()
              .allMatch(
                  cross ->
                      sheet.stream()
                          .anyMatch(
                              hole ->
                                  near(cross.x() - start.x(), hole.x() - origin.x())
                                      && near(start.y() - cross.y(), hole.y() - origin.y())));
      if (fits) {
        matches.add(first);
      }
    }
    assertThat(matches).isNotEmpty();
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < 0.1;
  }

  /** Arms of 0.9 mm. */
  private static boolean isCross(PdfPage.Blot blot) {
    return Math.abs(blot.width() - 1.8) < 0.15 && Math.abs(blot.height() - 1.8) < 0.15;
  }

  private static String absolute(Path file) {
    return file.toAbsolutePath().toString();
  }
}
