package plycrag.drawing.room;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;
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
}
