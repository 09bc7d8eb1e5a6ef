package plycrag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.files.pdf.LittlePdf;

/** Tiles laid by the readings that are printed on them show the holes of the list. */
class TilesAgreeTest {
  private static final Path SAMPLES = Path.of("out-samples");

  /** mm: what paper may be off, and what a reading is rounded by (1/32 in) with some to spare. */
  private static final double TRUE = 0.1;

  private static final double ROUNDED = 0.85;
  private static final double INCH = 25.4;

  static List<Path> tiles() {
    return TestFiles.list(SAMPLES, ".pdf").stream()
        .filter(file -> file.getParent().endsWith("templates"))
        .filter(file -> file.getFileName().toString().startsWith("sheet-"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("tiles")
  void showEveryHoleAtItsPlace(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    List<PdfWords.Word> words = PdfWords.of(bytes);
    List<String> pages = LittlePdf.of(bytes).contents();
    String sheet = file.getFileName().toString().replaceAll("sheet-|\\.pdf", "");
    List<HoleList.Row> listed = HoleList.of(file.getParent().getParent()).inserts(sheet, "front");
    Set<HoleList.Row> shown = new LinkedHashSet<>();
    for (int page = 2; page <= pages.size(); page++) {
      int number = page;
      List<PdfWords.Word> here = words.stream().filter(word -> word.page() == number).toList();
      shown.addAll(holes(LittlePdf.circles(pages.get(page - 1)), here, listed));
    }
    assertThat(shown).containsExactlyInAnyOrderElementsOf(listed);
  }

  /** The holes of a tile, which all lie off the list's places by the same. */
  private static List<HoleList.Row> holes(
      List<LittlePdf.Circle> circles, List<PdfWords.Word> words, List<HoleList.Row> listed) {
    assertThat(circles).isNotEmpty();
    List<HoleList.Row> holes = new ArrayList<>();
    LittlePdf.Circle first = circles.get(0);
    for (LittlePdf.Circle circle : circles) {
      HoleList.Row hole = told(beside(circle, words), listed);
      assertThat(2 * circle.radius()).isCloseTo(hole.diameter(), within(TRUE));
      holes.add(hole);
      HoleList.Row origin = holes.get(0);
      assertThat(circle.x() - first.x()).isCloseTo(hole.x() - origin.x(), within(TRUE));
      assertThat(circle.y() - first.y()).isCloseTo(hole.y() - origin.y(), within(TRUE));
    }
    return holes;
  }

  private static HoleList.Row told(String words, List<HoleList.Row> listed) {
    String[] readings = words.split(" / ", -1);
    assertThat(readings).as(words).hasSize(2);
    List<HoleList.Row> near = new ArrayList<>();
    for (double unit : List.of(1.0, INCH)) {
      double x = number(readings[0]) * unit;
      double y = number(readings[1]) * unit;
      listed.stream()
          .filter(row -> Math.abs(row.x() - x) < ROUNDED && Math.abs(row.y() - y) < ROUNDED)
          .forEach(near::add);
    }
    assertThat(near).as(words).hasSize(1);
    return near.get(0);
  }

  /** Of {@code 8}, {@code 8.5}, {@code 8 1/2} or {@code 1/2}. */
  private static double number(String text) {
    double sum = 0;
    for (String part : text.split(" ", -1)) {
      String[] fraction = part.split("/", -1);
      sum +=
          fraction.length == 1
              ? Double.parseDouble(part)
              : Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1]);
    }
    return sum;
  }

  /** The words that begin on a hole's right, or end on its left, a little above it. */
  private static String beside(LittlePdf.Circle circle, List<PdfWords.Word> words) {
    double off = circle.radius() + 1;
    List<PdfWords.Word> row =
        words.stream()
            .filter(word -> Math.abs(box(word).centre().y - circle.y() - off) < 0.2)
            .sorted(Comparator.comparingDouble(word -> box(word).getMinX()))
            .toList();
    String right = run(row, circle.x() + off, false);
    return right.isEmpty() ? run(reversed(row), circle.x() - off, true) : right;
  }

  /** Words that follow each other from a place on, rightward or leftward. */
  private static String run(List<PdfWords.Word> row, double from, boolean leftward) {
    String text = "";
    double at = from;
    for (PdfWords.Word word : row) {
      double near = leftward ? box(word).getMaxX() : box(word).getMinX();
      if (Math.abs(near - at) < (text.isEmpty() ? 0.2 : 1.5)) {
        String pair = leftward ? word.text() + " " + text : text + " " + word.text();
        text = pair.strip();
        at = leftward ? box(word).getMinX() : box(word).getMaxX();
      }
    }
    return text;
  }

  private static List<PdfWords.Word> reversed(List<PdfWords.Word> row) {
    List<PdfWords.Word> turned = new ArrayList<>(row);
    Collections.reverse(turned);
    return turned;
  }

  private static Envelope box(PdfWords.Word word) {
    return word.place().getEnvelopeInternal();
  }
}
