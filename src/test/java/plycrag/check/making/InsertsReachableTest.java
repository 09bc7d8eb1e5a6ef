package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class InsertsReachableTest {
  private static final String CLOSED = "[wall]\nbehind = \"none\"\n[[facet]]\n";

  @Test
  void passesWhereSomebodyCanReachThem() {
    Found.by("inserts-reachable", CLOSED.replace("none", "reach")).isNothing();
    Found.by("inserts-reachable", "[[facet]]\n").isNothing();
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
            "choose inserts that are screwed on ([inserts] kind), or fix a sheet so that it comes"
                + " off");
  }
}
