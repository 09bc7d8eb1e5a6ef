package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Studs doubled at a seam near the wall's side. */
class MembersOverlapTest {

  private static final String NARROW =
      """
      [wall]
      name = "Narrow"
      [[facet]]
      width = 362
      length = 300
      [sheet]
      length = 300
      width = 300
      """;

  @Test
  void passesWhereTheLastTwoPiecesShare() {
    // two pieces of 180: the seam's studs stand from 136 to 226
    Found.by("members-overlap", NARROW + "least-width = 100").isNothing();
  }

  @Test
  void passesWhereTheFirstPieceMayBeShorter() {
    // a piece of 60 beside one of 300 would have the seam's stud from 301 to 346, in the edge's
    Found.by("members-overlap", NARROW + "least-width = 50").isNothing();
  }

  @Test
  void findsTheSeamsStudsInTheEdgeStuds() {
    // two pieces of 180, studs 100 broad: 0 to 100 against 81 to 181, and likewise on the right
    String broad = NARROW + "least-width = 100\n[frame]\nsection = [100, 95]";
    Found.by("members-overlap", broad)
        .times(2)
        .isError(true)
        .at(90.5, 150)
        .between("ST1", "ST2")
        .measured(-19, 0)
        .says("ST1 overlaps ST2 by 19 mm")
        .suggests(
            "make the facet larger or smaller ([[facet]] width, length), the studs "
                + "further apart ([frame] stud-spacing) or the sheets' least width greater "
                + "([sheet] least-width)");
  }

  /**
   * By hand: pieces of 1220 mm meet at 1221 mm, so the seam's second stud stands from 1221 to 1266;
   * the trimmer beside an opening from 1300 on would stand from 1255 on, 11 mm in it.
   */
  @Test
  void anOpeningsTimberInASeamsStudTellsWhereTheOpeningMayGo() {
    String door =
        """
        [[facet]]
        width = 2442
        length = 2400
        [sheet]
        lay = "up"
        least-width = 1220
        [[cutout]]
        name = "door"
        left = %d
        low = 0
        width = 800
        height = 2000
        """;
    Found.by("members-overlap", door.formatted(1300))
        .times(1)
        .measured(-11, 0)
        .suggests(
            "move cutout door to the right by 11 mm, so that the timber round it stands "
                + "beside ST6");
    Found.by("members-overlap", door.formatted(1311)).isNothing();
  }

  private static final String CORNER =
      """
      [[facet]]
      name = "a"
      width = 1200
      length = 2400
      [[facet]]
      name = "b"
      beside = "a"
      turn = -60
      outline = [[0, 0], [1800, 0], [1800, 2400], [%d, 2400]]
      """;

  /** Behind an outside corner frames crowd, and nothing trims one that only begins at it. */
  @Test
  void namesTheFacetThatDoesNotRunUpToItsCorner() {
    Found.by("members-overlap", CORNER.formatted(300))
        .times(1)
        .isError(true)
        .suggests(
            "the frames of facets a and b reach into each other; let the outline of facet b run up"
                + " to their corner ([[facet]] outline)");
    Found.by("members-overlap", CORNER.formatted(0)).isNothing();
  }

  private static final String NICHE =
      """
      [[facet]]
      name = "a"
      width = 1200
      length = 2000
      [[facet]]
      name = "b"
      beside = "a"
      width = %d
      length = 2000
      [[facet]]
      name = "c"
      beside = "b"
      width = 1200
      angle = 30
      length = 2000
      """;

  @Test
  void namesFacetsThatStandTooNearWithAnotherBetweenThem() {
    Found narrow = Found.by("members-overlap", NICHE.formatted(600)).isError(true);
    narrow.suggests(
        "the frames of facets a and c reach into each other; make what stands between them wider by"
            + " at least 344 mm ([[facet]] width)");
    Found.by("members-overlap", NICHE.formatted(1000)).isNothing();
  }

  private static final String POSTS =
      """
      [wall]
      raise = 200
      [[facet]]
      name = "left"
      angle = 15
      width = 2400
      length = 2200
      [[facet]]
      name = "right"
      beside = "left"
      turn = %d
      angle = 15
      outline = [[0, 0], [1800, 0], [1200, 2200], [0, 2200]]
      [support]
      kind = "freestanding"
      """;

  @Test
  void supportsOfTwoWallsThatMeetBehindTheirCornerAreTold() {
    Found.by("members-overlap", POSTS.formatted(-45))
        .isError(true)
        .suggests(
            "what holds up the walls of facets left and right reaches into each other behind their"
                + " corner; let them turn less ([[facet]] turn), or set it at another distance behind"
                + " them ([support] behind)");
    Found.by("members-overlap", POSTS.formatted(-20)).isNothing();
  }
}
