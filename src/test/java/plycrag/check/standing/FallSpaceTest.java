package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.check.Found;

/** What lies, stands or ends where people fall. */
class FallSpaceTest {
  private static final String OVERHANG =
      """
      [wall]
      raise = 400
      [[facet]]
      name = "main"
      angle = 30
      length = 2000
      width = 1200
      """;

  /** The rows of EN 12572-2:2017 Table 2, as DGUV Information 202-018 gives them. */
  @ParameterizedTest
  @CsvSource({"2900, 2000", "3200, 2500"})
  void theFloorIsClearAsFarAsTheWallIsHigh(double height, double clear) {
    String wall =
        "[[facet]]\nlength = " + height + "\nwidth = 1200\n[stock]\nlengths = [6000]\n[room]\n";
    Found.by("fall-space", wall + "front = " + (clear - 1))
        .isError(true)
        .measured(clear - 1, clear);
    assertThat(
            Found.by("fall-space", wall + "front = " + clear).findings().stream()
                .filter(finding -> finding.isError()))
        .isEmpty();
  }

  @Test
  void aHighWallIsTold() {
    Found.by("fall-space", "[[facet]]\nlength = 3200\nwidth = 1200\n")
        .times(1)
        .isError(false)
        .measured(-200, 0);
  }

  @Test
  void railsLieUnderMats() {
    String stand = OVERHANG + "[support]\nkind = \"freestanding\"\n";
    Found.by("fall-space", stand).isError(true).measured(0, 140);
    Found.by("fall-space", stand + "[mat]\nthickness = 80\n").isError(true).measured(80, 140);
    Found.by("fall-space", stand + "[mat]\nthickness = 300\n").isNothing();
  }

  @Test
  void anObstacleInFrontIsTold() {
    String wall = "[[facet]]\nlength = 2000\nwidth = 1200\n[[obstacle]]\nname = \"pillar\"\n";
    Found.by("fall-space", wall + "out = 1500\nheight = 2500\n")
        .times(1)
        .isError(true)
        .measured(1500, 2000)
        .says(
            "pillar stands 1500 mm in front of the wall's outermost edge; 2000 mm must be clear"
                + " (EN 12572-2:2017 Table 2)");
    Found.by("fall-space", wall + "out = 2000\nheight = 2500\n").isNothing();
    Found.by("fall-space", wall + "out = 500\nlow = 2000\n").isNothing();
  }

  @Test
  void matsReachBeyondFreeEnds() {
    String wall =
        """
        [wall]
        raise = 400
        [[facet]]
        length = 2000
        width = 1200
        [mat]
        thickness = 300
        """;
    Found.by("fall-space", wall + "side = 500\n").times(2).isError(false).measured(500, 1500);
    Found.by("fall-space", wall + "side = 500\n[room]\nleft = 500\n").times(1);
    Found.by("fall-space", wall + "side = 1500\n").isNothing();
    Found.by("fall-space", wall).isNothing();
  }
}
