package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.flat.SheetSawing;
import plycrag.files.csv.CsvWriter;
import plycrag.layout.Layout;
import plycrag.stock.SheetList;

class CoverStripsTest {
  private static final double KERF = 3;

  /** Two facets that turn away from each other, cut square: the sheets part in front. */
  private static String wall(int width, int low, int high, String more) {
    return """
        [wall]
        fold-edges = "square"
        width = %d
        [[facet]]
        name = "low"
        angle = 30
        length = %d
        [[facet]]
        name = "high"
        angle = 0
        length = %d
        [inserts]
        when-blocked = "drop"
        [nesting]
        kerf = 3
        %s
        """
        .formatted(width, low, high, more);
  }

  private static List<OffcutPart> parts(OffcutParts strips) {
    return strips.strips().stream().flatMap(strip -> strip.parts().stream()).toList();
  }

  private static double distance(Envelope one, Envelope other) {
    double x = Math.max(one.getMinX() - other.getMaxX(), other.getMinX() - one.getMaxX());
    double y = Math.max(one.getMinY() - other.getMaxY(), other.getMinY() - one.getMaxY());
    return Math.max(x, y);
  }

  /** The gap is 2 x 18 x sin 15° = 9.3 mm; 30 mm more on either side is 69.3, on a tape 70. */
  @Test
  void theStripIsAsLongAsTheFoldAndLapsTheGap() {
    OffcutParts strips = Walls.laidOut(wall(2400, 1000, 1000, "")).offcuts();
    assertThat(strips.strips()).hasSize(1);
    CoverStrip strip = strips.strips().get(0);
    assertThat(strip.gap()).isCloseTo(9.317, within(0.001));
    assertThat(strip.width()).isEqualTo(70);
    assertThat(strip.length()).isEqualTo(2400);
    assertThat(strip.over()).isEqualTo("above facet low");
    assertThat(strips.furtherSheets()).isZero();
    assertThat(strip.parts()).extracting(OffcutPart::mark).containsExactly("CS1");
  }

  @Test
  void mitredFoldsLeaveNothingToCover() {
    String mitred = wall(2400, 1000, 1000, "").replace("square", "mitred");
    assertThat(Walls.laidOut(mitred).offcuts().strips()).isEmpty();
  }

  /** Whole sheets leave nothing over: one more is bought, and nothing said of an offcut. */
  @Test
  void aFurtherSheetComesOnlyWhereNoOffcutTakesIt() {
    String whole = wall(2440, 1220, 1220, "");
    Layout layout = Walls.laidOut(whole);
    assertThat(layout.sheets())
        .allMatch(
            sheet -> sheet.stock().cutting().offcuts().stream().allMatch(CoverStripsTest::isThin));
    OffcutParts strips = layout.offcuts();
    assertThat(strips.furtherSheets()).isEqualTo(1);
    assertThat(strips.strips().get(0).from()).isEqualTo("a further sheet");
    assertThat(CsvWriter.write(SheetList.of(Inspection.of(layout))))
        .contains("from a further sheet");
  }

  private static boolean isThin(Envelope offcut) {
    return Math.min(offcut.getWidth(), offcut.getHeight()) < 70;
  }

  /** Sizes at random: inside their sheet, clear of its pieces and of each other by a kerf. */
  @Property(tries = 12)
  void stripsLieClearOfPieces(
      @ForAll @IntRange(min = 900, max = 3600) int width,
      @ForAll @IntRange(min = 700, max = 1600) int low,
      @ForAll @IntRange(min = 700, max = 1600) int high,
      @ForAll boolean router) {
    String cut = router ? "cut-with = \"router\"" : "";
    Layout layout = Walls.laidOut(wall(width, low, high, cut));
    OffcutParts strips = layout.offcuts();
    assertThat(strips.strips().get(0).length()).isCloseTo(width, within(0.01));
    for (OffcutPart part : parts(strips)) {
      assertThat(Math.min(part.place().getWidth(), part.place().getHeight()))
          .isCloseTo(strips.strips().get(0).width(), within(0.01));
      for (LaidSheet sheet : layout.sheets()) {
        if (part.sheet().filter(sheet.mark()::equals).isPresent()) {
          assertThat(sheet.area().contains(part.place())).isTrue();
          for (LaidPiece piece : sheet.pieces()) {
            assertThat(distance(piece.box(), part.place())).isGreaterThanOrEqualTo(KERF - 0.01);
          }
        }
      }
      for (OffcutPart other : parts(strips)) {
        boolean same = other.sheet().equals(part.sheet()) && !other.mark().equals(part.mark());
        assertThat(same ? distance(other.place(), part.place()) : KERF)
            .isGreaterThanOrEqualTo(KERF - 0.01);
      }
    }
    boolean taken =
        layout.sheets().stream()
            .flatMap(sheet -> sheet.stock().cutting().offcuts().stream())
            .anyMatch(
                offcut ->
                    Math.min(offcut.getWidth(), offcut.getHeight()) >= 70
                        && Math.max(offcut.getWidth(), offcut.getHeight()) >= width);
    assertThat(taken && strips.furtherSheets() > 0).isFalse();
    assertThat(taken && parts(strips).size() > 1).isFalse();
  }

  /** Wider than any offcut is long: joined, no length shorter than 300, and said so. */
  @Test
  void longStripsAreJoined() {
    OffcutParts strips = Walls.laidOut(wall(3600, 1000, 1000, "")).offcuts();
    CoverStrip strip = strips.strips().get(0);
    assertThat(strip.length()).isEqualTo(3600);
    assertThat(strip.parts()).extracting(OffcutPart::mark).startsWith("CS1a", "CS1b");
    assertThat(strip.parts()).allMatch(part -> part.length() >= 300);
    assertThat(strip.from()).startsWith("joined from ");
  }

  @Test
  void theSheetsPictureAndListShowThem() {
    Layout layout = Walls.laidOut(wall(2400, 1000, 1000, ""));
    OffcutPart part = parts(layout.offcuts()).get(0);
    LaidSheet sheet =
        layout.sheets().stream()
            .filter(one -> part.sheet().filter(one.mark()::equals).isPresent())
            .findFirst()
            .orElseThrow();
    Drawing drawing = SheetSawing.of(Inspection.of(layout), sheet);
    List<String> words = new ArrayList<>();
    labels(drawing).forEach(label -> words.add(label.text()));
    assertThat(words).contains("CS1").anyMatch(text -> text.startsWith("Cover strip CS1: "));
    assertThat(SheetSawing.isNeeded(Inspection.of(layout), sheet)).isTrue();
    assertThat(CsvWriter.write(SheetList.of(Inspection.of(layout))))
        .contains(sheet.mark() + ",,strip,,CS1,low,");
  }

  private static Stream<Shape.Label> labels(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast);
  }
}
