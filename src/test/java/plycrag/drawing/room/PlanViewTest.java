package plycrag.drawing.room;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.TestFiles;
import plycrag.Walls;
import plycrag.document.Drawing;
import plycrag.drawing.WordsApart;

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
}
