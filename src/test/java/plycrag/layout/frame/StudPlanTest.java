package plycrag.layout.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;

class StudPlanTest {

  /**
   * The seam's stud stands at 1220.5, off the marking grid, and 1220 lies beyond it. Four bays of
   * 305 would begin with one of 305.5 once the middles are marked; a fifth keeps the spacing.
   */
  @Test
  void aSeamOffTheMarkingGridTakesAStudMore() {
    String wall =
        """
        [[facet]]
        width = 2440.5
        length = 1200
        [sheet]
        width = 1220.5
        lay = "up"
        seam-gap = 0
        [frame]
        stud-spacing = 305
        seams = "shared"
        """;
    List<Double> middles =
        Walls.laidOut(wall).facets().get(0).members().stream()
            .filter(member -> member.role() == MemberRole.STUD)
            .map(member -> member.box().centre().x)
            .toList();
    assertThat(middles).contains(1220.5).hasSize(11);
    for (int next = 1; next < middles.size(); next++) {
      assertThat(middles.get(next) - middles.get(next - 1)).isLessThanOrEqualTo(305 + 1e-3);
    }
  }
}
