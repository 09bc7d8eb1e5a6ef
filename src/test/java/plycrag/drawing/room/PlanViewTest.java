package plycrag.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.document.Drawing;
import plycrag.document.Shape;
import plycrag.drawing.WordsApart;
import plycrag.drawing.pen.Layers;

class PlanViewTest {

  /** A long name reaches from a quarter of the wall to the corner, where the angle stands. */
  @ParameterizedTest
  @ValueSource(ints = {1200, 1800, 2400})
  void anAngleKeepsClearOfNames(int width) {
    WordsApart.check(
        PlanView.of(
            Walls.judged(
                """
                [wall]
                width = %s
                [[facet]]
                name = "port"
                length = 2000
                [[facet]]
                name = "starboard"
                beside = "port"
                turn = 90
                angle = 10
                length = 2000
                """
                    .formatted(width))));
  }

  /** In a corner a wall that leans stands over the floor that is to be clear for the other. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "corner-trimmed-along-a-kink",
        "corner-with-a-kick-on-the-left",
        "corner-with-a-kick-on-the-right",
        "side-by-side-at-two-heights"
      })
  void whatIsClearToFallIsToldClearOfLines(String wall) {
    Drawing plan = PlanView.of(Walls.judged(TestFiles.text("hard-walls/" + wall + ".toml")));
    WordsApart.check(plan);
    WordsApart.checkLines(plan);
  }

  /** The post stands from 14 to 24 in along the lower edge of the first wall. */
  @Test
  void theLowerEdgeLeavesAGapWhereAnOpeningBeginsAtIt() {
    String wall = TestFiles.text("hard-walls/side-by-side-at-two-heights.toml");
    Drawing plan = PlanView.of(Walls.judged(wall));
    assertThat(
            plan.shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast)
                .filter(line -> line.layer().equals(Layers.OUTLINE))
                .map(line -> Math.round((line.from().x() + line.to().x()) / 2 / 25.4)))
        .containsExactlyInAnyOrder(7L, 34L, 64L);
    assertThat(plan.shapes())
        .filteredOn(shape -> shape instanceof Shape.Label label && label.text().equals("post"))
        .hasSize(1);
  }
}
