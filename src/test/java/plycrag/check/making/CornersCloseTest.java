package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class CornersCloseTest {
  private static final String PAIR =
      """
      [[facet]]
      name = "port"
      angle = %s
      length = 600
      [[facet]]
      name = "port top"
      angle = 20
      length = 1500
      [[facet]]
      name = "starboard"
      beside = "port"
      turn = %s
      angle = %s
      length = %s
      [[facet]]
      name = "starboard top"
      angle = 20
      length = 1500
      """;

  @Test
  void passesWhereBothFoldAtOneHeight() {
    Found.by("corner-open", PAIR.formatted(0, 60, 0, 600)).isNothing();
  }

  @Test
  void findsFoldsAtTwoHeights() {
    Found.by("corner-open", PAIR.formatted(0, 60, 0, 500))
        .times(1)
        .isError(true)
        .between("port top", "starboard top")
        .says(
            "facets port top and starboard top begin at 600 mm and 500 mm above the floor, so that"
                + " their corner stays open")
        .suggests("make the facets below them end at one height");
  }

  /** The cosine of the angle is sin(-15°) sin 30°: 97.4°. */
  @Test
  void findsWallsThatNoSawCouldMitre() {
    Found.by("corner-open", PAIR.formatted(-15, 90, 30, 669.2).replace("angle = 20", "angle = 0"))
        .says(
            "facets port and starboard meet at 97.4° from straight, and no saw halves more than"
                + " 90°");
  }

  @Test
  void findsAFacetThatEndsInAPoint() {
    String narrow =
        """
        [[facet]]
        name = "port"
        angle = 45
        length = 3000
        width = 800
        [[facet]]
        name = "port top"
        angle = 50
        [[facet]]
        name = "starboard"
        beside = "port"
        angle = 45
        length = 3000
        """;
    Found.by("corner-open", narrow)
        .says(
            "the sides of facet port meet before its top, and facet port top has nothing to stand"
                + " on");
  }
}
