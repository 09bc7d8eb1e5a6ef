package plycrag.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.drawing.flat.FacetView;
import plycrag.drawing.flat.SheetSawing;
import plycrag.drawing.pen.View;
import plycrag.drawing.room.FoldDetail;
import plycrag.drawing.room.SideView;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.sheets.SheetFace;

class ViewsTest {
  private static final CheckedLayout REFUSED =
      Walls.judged(TestFiles.text("must-fail/layout/top-row-in-plate.toml"));

  private static final CheckedLayout RECESSED =
      Walls.judged(
          """
          [[facet]]
          width = 1200
          length = 1200
          [inserts]
          recess-depth = 4
          [[tool]]
          diameter = 6
          length = 30
          [[tool]]
          kind = "end-mill"
          diameter = 6
          length = 22
          """);

  /** Made once for all tests. */
  private static final List<Drawing> PUBLISHED =
      Stream.concat(
              TestFiles.samples().stream().map(Walls::portfolio),
              Stream.of(Walls.portfolio(RECESSED)))
          .flatMap(portfolio -> drawings(portfolio).stream())
          .toList();

  static Stream<Drawing> published() {
    return PUBLISHED.stream();
  }

  private static List<Drawing> drawings(Portfolio portfolio) {
    return portfolio.views().stream().flatMap(ViewsTest::drawings).toList();
  }

  /** The whole, and the pages where these are others. */
  private static Stream<Drawing> drawings(View view) {
    Drawing whole = view.drawing();
    return Stream.concat(
        Stream.of(whole), view.pages().stream().filter(page -> !page.equals(whole)));
  }

  private static List<Shape.Label> labels(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast)
        .toList();
  }

  private static Envelope box(Shape.Label label, int scale) {
    double width = TextSize.width(label.text(), label.height()) * scale;
    double height = label.height() * scale;
    double start =
        label.anchor() == TextAnchor.START
            ? 0
            : label.anchor() == TextAnchor.END ? -width : -width / 2;
    double x = label.at().x();
    double y = label.at().y();
    return label.turn() == 90
        ? new Envelope(x - height / 2, x + height / 2, y + start, y + start + width)
        : new Envelope(x + start, x + start + width, y - height / 2, y + height / 2);
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("published")
  void noWordsLieOnOthersAndAllAreOnThePage(Drawing drawing) {
    List<Shape.Label> labels = labels(drawing);
    Envelope page =
        new Envelope(
            drawing.extent().left(),
            drawing.extent().right(),
            drawing.extent().low(),
            drawing.extent().high());
    for (int at = 0; at < labels.size(); at++) {
      Envelope box = box(labels.get(at), drawing.scale());
      assertThat(page.covers(box)).as(drawing.title() + ": " + labels.get(at).text()).isTrue();
      assertThat(labels.get(at).height()).isGreaterThanOrEqualTo(2.5);
      for (Shape.Label other : labels.subList(0, at)) {
        assertThat(box.intersects(box(other, drawing.scale())))
            .as(drawing.title() + ": " + labels.get(at).text() + " on " + other.text())
            .isFalse();
      }
    }
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("published")
  void noLineGoesThroughWords(Drawing drawing) {
    WordsApart.checkLines(drawing);
  }

  @Test
  void theBackIsMirroredAndSaysSo() {
    FacetLayout facet = REFUSED.layout().facets().get(0);
    Drawing back = FacetView.of(REFUSED, facet, SheetFace.BACK);
    assertThat(circles(back, 6).map(circle -> circle.centre().x()).distinct().sorted())
        .containsExactly(100.0, 350.0, 640.0, 900.0, 1100.0);
    assertThat(circles(back, 13)).hasSize(50);
    assertThat(labels(back)).anyMatch(one -> one.text().startsWith("BACK, SEEN FROM BEHIND"));
    Drawing front = FacetView.of(REFUSED, facet, SheetFace.FRONT);
    assertThat(circles(front, 6).map(circle -> circle.centre().x()).distinct().sorted())
        .containsExactly(100.0, 300.0, 560.0, 850.0, 1100.0);
    assertThat(labels(front)).anyMatch(one -> one.text().startsWith("FRONT"));
  }

  private static Stream<Shape.Circle> circles(Drawing drawing, double radius) {
    return drawing.shapes().stream()
        .filter(Shape.Circle.class::isInstance)
        .map(Shape.Circle.class::cast)
        .filter(circle -> circle.radius() == radius);
  }

  @Test
  void whatMustNotBeMadeIsStamped() {
    List<Drawing> drawings = new ArrayList<>(drawings(Walls.portfolio(REFUSED)));
    // Its only sheet stays whole, so that the wall has no view of how it is cut.
    drawings.add(SheetSawing.of(REFUSED, REFUSED.layout().sheets().get(0)));
    assertThat(drawings)
        .hasSize(13)
        .allMatch(
            drawing ->
                labels(drawing).stream().anyMatch(one -> one.text().equals("NOT FOR MAKING")));
    assertThat(published())
        .noneMatch(
            drawing ->
                labels(drawing).stream().anyMatch(one -> one.text().equals("NOT FOR MAKING")));
  }

  @Test
  void everyViewSaysThatItIsForBoulderingAndWhatHoldsItUp() {
    assertThat(published().filter(drawing -> !labels(drawing).isEmpty()))
        .allMatch(
            drawing -> labels(drawing).stream().anyMatch(one -> one.text().contains("No rope")))
        .allMatch(
            drawing ->
                labels(drawing).stream()
                    .map(Shape.Label::text)
                    .anyMatch(
                        text ->
                            text.contains("Support not designed: frame only")
                                || text.contains("Support set out, its strength not calculated")
                                || text.contains("Support set out, its strength not approved")));
  }

  /** Sine and cosine of 30° are a half and 0.8660254: 300 + 2440 × 0.8660254 = 2413.1. */
  @Test
  void theSectionReadsTheHeights() {
    CheckedLayout checked =
        Walls.judged("[wall]\nraise = 300\n[[facet]]\nangle = 30\nlength = 2440\n");
    Drawing section = SideView.of(checked, checked.layout().facets());
    assertThat(labels(section).stream().map(Shape.Label::text)).contains("300", "2413.1", "1220");
  }

  /** A kick of 0° below a face that leans 30° encloses 150°, halved by planes 15° from square. */
  @Test
  void theFoldTellsItsAngles() {
    CheckedLayout checked =
        Walls.judged(
            """
            [[facet]]
            name = "kick"
            length = 400
            [[facet]]
            name = "main"
            angle = 30
            """);
    List<FacetLayout> run = checked.layout().facets();
    Drawing detail = FoldDetail.of(checked, run.get(0), run.get(1));
    assertThat(labels(detail).stream().map(Shape.Label::text))
        .contains("150°")
        .anyMatch(line -> line.contains("tilted 15° from square"));
  }
}
