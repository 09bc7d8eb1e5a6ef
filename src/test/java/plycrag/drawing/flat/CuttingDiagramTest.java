package plycrag.drawing.flat;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
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
import plycrag.document.Xy;
import plycrag.drawing.pen.Inked;
import plycrag.drawing.pen.Layers;
import plycrag.prices.PriceList;
import plycrag.stock.Stick;
import plycrag.stock.StickPlan;
import plycrag.units.Tape;

class CuttingDiagramTest {
  /** A4 (ISO 216) less a filing margin, a frame, a title block and a little air, mm. */
  private static final double WIDTH = 210 - 20 - 10 - 6;

  private static final double HEIGHT = 297 - 20 - 50 - 6;

  private static final Pattern PLAIN = Pattern.compile("Stick [0-9]+: [0-9]+ mm");

  static List<Path> samples() {
    return TestFiles.samples();
  }

  private static StickPlan plan(CheckedLayout checked) {
    return StickPlan.of(checked, PriceList.empty());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyPageIsOnA4AndEveryStickOnOne(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    List<Drawing> pages = CuttingDiagram.pages(checked, plan(checked));
    for (Drawing page : pages) {
      Envelope ink = Inked.box(page);
      assertThat(ink.getWidth() / page.scale()).isLessThan(WIDTH);
      assertThat(ink.getHeight() / page.scale()).isLessThan(HEIGHT);
      assertThat(page.scale()).isEqualTo(pages.get(0).scale());
    }
    assertThat(pages.stream().flatMap(CuttingDiagramTest::labels).map(Shape.Label::text))
        .filteredOn(text -> text.startsWith("Stick "))
        .hasSameSizeAs(plan(checked).sticks());
  }

  /** Inside the piece, or at the end of a leader that begins there. */
  @ParameterizedTest
  @MethodSource("samples")
  void everyPieceHasItsMarkAndLength(Path sample) {
    CheckedLayout checked = Walls.judged(sample);
    Tape tape = checked.layout().wall().tape();
    StickPlan plan = plan(checked);
    Drawing all = CuttingDiagram.of(checked, plan, plan.sticks());
    for (Stick stick : plan.sticks()) {
      for (Stick.Cut cut : stick.cuts()) {
        String length = tape.reading(cut.member().length());
        Shape.Label mark = only(labels(all), cut.member().mark());
        double x = shown(all, mark);
        assertThat(x).as(mark.text()).isBetween(cut.offset(), cut.end());
        assertThat(
                labels(all)
                    .filter(one -> one.text().endsWith(length))
                    .filter(one -> Math.abs(shown(all, one) - x) < (cut.end() - cut.offset()) / 2)
                    .filter(one -> apart(one.at(), mark.at()) < 6 * all.scale()))
            .as(mark.text())
            .hasSize(1);
      }
    }
  }

  /** Where all are of one, a note says it once. */
  @Test
  void sticksOfSeveralSectionsSayTheirs() {
    String frame = "[[facet]]\nangle = 20\nwidth = 1200\nlength = 1500\n";
    assertThat(headings(Walls.judged(frame))).isNotEmpty().allMatch(PLAIN.asMatchPredicate());
    assertThat(headings(Walls.judged(frame + "[support]\nkind = \"freestanding\"\n")))
        .anyMatch(text -> text.matches("Stick [0-9]+ of 45x90: [0-9]+ mm"))
        .anyMatch(text -> text.matches("Stick [0-9]+ of 45x140: [0-9]+ mm"))
        .noneMatch(PLAIN.asMatchPredicate());
  }

  private static List<String> headings(CheckedLayout checked) {
    StickPlan plan = plan(checked);
    return labels(CuttingDiagram.of(checked, plan, plan.sticks()))
        .map(Shape.Label::text)
        .filter(text -> text.startsWith("Stick "))
        .toList();
  }

  private static Stream<Shape.Label> labels(Drawing drawing) {
    return drawing.shapes().stream()
        .filter(Shape.Label.class::isInstance)
        .map(Shape.Label.class::cast);
  }

  private static Shape.Label only(Stream<Shape.Label> labels, String mark) {
    List<Shape.Label> found =
        labels.filter(one -> one.text().equals(mark) || one.text().startsWith(mark + " ")).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  /** What a label is about: where it stands, or where the leader that ends at it begins. */
  private static double shown(Drawing drawing, Shape.Label label) {
    Xy end = label.at();
    for (int step = 0; step < 2; step++) {
      Xy from = end;
      double reach = step == 0 ? 3 * drawing.scale() : 1e-6;
      end =
          drawing.shapes().stream()
              .filter(Shape.Line.class::isInstance)
              .map(Shape.Line.class::cast)
              .filter(line -> line.layer().equals(Layers.DIMENSIONS))
              .filter(line -> apart(lower(line), from) < reach && lower(line).y() >= from.y())
              .min(Comparator.comparingDouble(line -> apart(lower(line), from)))
              .map(line -> line.from().y() > line.to().y() ? line.from() : line.to())
              .orElse(from);
    }
    return end.x();
  }

  private static Xy lower(Shape.Line line) {
    return line.from().y() > line.to().y() ? line.to() : line.from();
  }

  private static double apart(Xy one, Xy other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
