package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class CornersMitredTest {
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
  void passesAtARightAngle() {
    Found.by("corner-saw", PAIR.formatted(0, 90, 0, 500)).isNothing();
  }

  /** Square to a plumb wall, whatever the other leans, is 90° and no rounding more. */
  @Test
  void passesAtARightAngleOnALean() {
    String niche =
        """
        [[facet]]
        name = "port"
        [[facet]]
        name = "end"
        beside = "port"
        [[facet]]
        name = "starboard"
        beside = "end"
        angle = 30
        """;
    Found.by("corner-saw", niche).isNothing();
  }

  /** From 1500 up a side of 200 slants away: 5 mm from the corner at 37.5 mm up, 200 at its top. */
  @Test
  void tellsOfACornerThatStaysOpen() {
    String open =
        """
        [[facet]]
        name = "one"
        outline = [[0, 0], [1200, 0], [%s, 1500], [0, 1500]]
        [[facet]]
        name = "two"
        beside = "one"
        turn = 60
        width = 1200
        length = 1500
        """;
    Found.by("corner-saw", open.formatted("1200")).isNothing();
    Found.by("corner-saw", open.formatted("1000"))
        .times(1)
        .isError(false)
        .between("one", "two")
        .says(
            "the corner between facets one and two stays open over 1463 mm of its height, 200 mm"
                + " wide at 1500 mm above the floor")
        .suggests(
            "let the outline of facet one run up to the corner ([[facet]] outline), or close the gap"
                + " so that nobody reaches in");
  }

  /** The cosine of the angle is sin(-15°) sin 30°: 97.4°. */
  @Test
  void findsWallsThatNoSawCouldMitre() {
    Found.by("corner-saw", PAIR.formatted(-15, 90, 30, 669.2).replace("angle = 20", "angle = 0"))
        .says(
            "facets port and starboard meet at 97.4° from straight, and no saw halves more than"
                + " 90°");
  }
}
