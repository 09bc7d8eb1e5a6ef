package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class ZonesFitTest {
  private static final String ZONE =
      """
      [[zone]]
      name = "feet"
      centre = [%s, 300]
      diameter = 400
      """;

  @Test
  void passesOneThatIsPartlyOnItsFacet() {
    Found.by("zone-place", Found.BAY + ZONE.formatted(1300)).isNothing();
  }

  /** By hand: a circle of 400 about 1500 begins at 1300, 100 mm beyond a facet of 1200. */
  @Test
  void findsOneBesideItsFacet() {
    Found.by("zone-place", Found.BAY + ZONE.formatted(1500))
        .times(1)
        .isError(true)
        .measured(-100, 0)
        .says("zone feet lies beside the face of facet main")
        .suggests(
            "move it onto the facet: places are measured from the facet's left and lower edge");
  }
}
