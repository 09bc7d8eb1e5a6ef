package plycrag.layout.skin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.geometry.Shapes;
import plycrag.layout.facet.FacetLayout;

class OpeningsAtSidesTest {
  /**
   * The lower facet's sheets go on behind the fold by 18 mm × tan 15° = 4.8 mm: an opening that
   * ends at the fold goes through that, too, and so do the studs and plates behind it.
   */
  @Test
  void anOpeningAtAFoldLeavesNoStripBehind() {
    FacetLayout low = Walls.laidOut(wall(30, 1000 - 260)).facets().get(0);
    assertThat(low.pieces())
        .allSatisfy(piece -> assertThat(Shapes.openings(piece.back())).isEmpty())
        .anySatisfy(
            piece -> assertThat(piece.back().getEnvelopeInternal().getMaxY()).isGreaterThan(1004));
    var opening = Shapes.rectangle(901, 800, 1199, 1100);
    assertThat(low.pieces())
        .allSatisfy(piece -> assertThat(piece.back().intersects(opening)).isFalse());
    assertThat(low.members())
        .allSatisfy(member -> assertThat(member.footprint().intersects(opening)).isFalse());
  }

  private static String wall(int angle, int from) {
    return """
        [wall]
        width = 2400
        [[facet]]
        name = "low"
        length = 1000
        [[facet]]
        name = "high"
        angle = %s
        length = 1200
        [[cutout]]
        facet = "low"
        left = 900
        low = %s
        width = 300
        height = 260
        """
        .formatted(angle, from);
  }
}
