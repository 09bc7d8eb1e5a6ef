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
            "make the facet larger or smaller, the studs further apart or the sheets' least width"
                + " greater");
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
            "move the opening to the right by 11 mm, so that the timber round it stands beside"
                + " ST6");
    Found.by("members-overlap", door.formatted(1311)).isNothing();
  }
}
