package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class InsertsReachableTest {
  private static final String CLOSED = "[wall]\nbehind = \"none\"\n[[facet]]\n";

  @Test
  void passesWhereSomebodyCanReachThem() {
    Found.by("inserts-reachable", "[[facet]]\n").isNothing();
  }

  /**
   * By hand, of a wall 2400 by 2400: 300 up, the middle column is 1200 mm from both sides; 1900 up
   * it is 500 mm from the top. A facet that stands on it closes its top.
   */
  @Test
  void tellsHowManyAreBeyondAnArm() {
    String reach =
        """
        [inserts]
        pattern = "lines"
        columns = [150, 1150]
        rows = [300, 1900]
        when-blocked = "report"
        [wall]
        behind = "reach"
        width = 2400
        [[facet]]
        length = 2400
        """;
    Found.by("inserts-reachable", reach)
        .times(1)
        .isError(false)
        .says(
            "an arm does not reach 1 of 4 inserts from behind: they lie further than 600 mm from every open side"
                + " and top of the frame");
    Found.by("inserts-reachable", reach + "[[facet]]\nangle = 10\nlength = 2400\n")
        .times(1)
        .says(
            "an arm does not reach 3 of 8 inserts from behind: they lie further than 600 mm from every open side"
                + " and top of the frame");
    Found.by(
            "inserts-reachable",
            reach.replace("width = 2400", "width = 1150").replace("[150, 1150]", "[150, 550]"))
        .isNothing();
    Found.by("inserts-reachable", reach.replace("[inserts]", "[inserts]\nkind = \"screw-on\""))
        .isNothing();
  }

  @Test
  void passesWhereTheyAreScrewedOn() {
    Found.by("inserts-reachable", CLOSED + "[inserts]\nkind = \"screw-on\"\n").isNothing();
  }

  @Test
  void tellsOfHammeredInsertsInAClosedWall() {
    Found.by("inserts-reachable", CLOSED)
        .times(1)
        .isError(false)
        .suggests(
            "choose inserts that are screwed on ([inserts] kind), or see that each sheet comes off"
                + " again: screwed alone, without glue, the heads of its screws left free");
  }

  /** Who may walk in behind the rest of a wall does not get behind what lies on the building. */
  @Test
  void tellsOfAFacetThatLiesOnTheBuilding() {
    String flat =
        "[[facet]]\nlength = 2400\nwidth = 2400\n"
            + "[support]\nkind = \"fixed\"\nfixed-to = \"concrete\"\nbehind = ";
    Found.by("inserts-reachable", flat + "0\n")
        .times(1)
        .says(
            "facet main lies flat on the building's wall, and an insert that was hammered in and"
                + " spins cannot be held there");
    Found.by("inserts-reachable", flat + "600\n").isNothing();
  }
}
