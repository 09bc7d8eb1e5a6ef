package plycrag.drawing.pen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.document.Fill;
import plycrag.document.Shape;
import plycrag.document.Xy;

/** What is drawn once stays what it is. */
class DrawnOnceTest {
  private static final List<Xy> CORNERS =
      List.of(new Xy(0, 0), new Xy(10, 0), new Xy(10, 5), new Xy(0, 5));
  private static final List<Xy> ROUND =
      List.of(new Xy(0, 0), new Xy(10, 0), new Xy(10, 5), new Xy(0, 5), new Xy(0, 0));

  @Test
  void aPathThatNothingTouchesAndThatEndsWhereItBeginsIsAnOutline() {
    Shape.Path round = new Shape.Path(Layers.CONTEXT, ROUND);
    assertThat(DrawnOnce.of(List.of(round)))
        .containsExactly(new Shape.Outline(Layers.CONTEXT, CORNERS, Fill.NONE));
  }

  @Test
  void ofAPathAlongAnOutlineTheRestIsLeft() {
    Shape.Outline outline =
        new Shape.Outline(
            Layers.OUTLINE,
            List.of(new Xy(0, 0), new Xy(10, 0), new Xy(10, -5), new Xy(0, -5)),
            Fill.NONE);
    assertThat(DrawnOnce.of(List.of(new Shape.Path(Layers.CONTEXT, ROUND), outline)))
        .contains(outline)
        .hasSize(4)
        .filteredOn(Shape.Line.class::isInstance)
        .hasSize(3);
  }
}
