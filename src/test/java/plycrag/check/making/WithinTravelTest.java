package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** One sheet of 2440 by 1220 mm, 18 mm thick; breakthrough 0.5 mm, safe height 25 mm. */
class WithinTravelTest {
  private static Found found(String machine) {
    return Found.by("machine-travel", Found.bay("100, 300", "100, 300") + "[machine]\n" + machine);
  }

  @Test
  void passesWhereTravelIsLargeEnoughOrNotTold() {
    found("").isNothing();
    found("travel-x = 2440\ntravel-y = 1220\ntravel-z = 43.5\n").isNothing();
  }

  @Test
  void tellsOfASheetLargerThanTheTravel() {
    found("travel-x = 1300\n")
        .times(1)
        .isError(true)
        .between("S1", "")
        .measured(1300, 2440)
        .says("sheet S1 needs 2440 mm across as it lies on the machine, which moves 1300 mm");
    found("travel-y = 1000\n").measured(1000, 1220);
  }

  @Test
  void tellsOfASafeHeightThatIsOutOfReach() {
    found("travel-z = 43\n").times(1).isError(true).measured(43, 43.5);
  }

  /**
   * A piece of 1200 mm in the lower left corner: a mill of 6 mm begins its way up the right side 4
   * mm below the sheet and ends the other 4 mm beside it, on the left.
   */
  @Test
  void countsTheWaysRoundThePieces() {
    String mill = "outlines = \"skin\"\n[[tool]]\nkind = \"end-mill\"\ndiameter = 6\nlength = 22\n";
    String wall = "[[facet]]\nwidth = 1200\nlength = 1200\n[inserts]\nsetback = 100\n[machine]\n";
    Found.by("machine-travel", wall + "travel-x = 2444\ntravel-y = 1224\n" + mill).isNothing();
    Found.by("machine-travel", wall + "travel-x = 2443\ntravel-y = 1223\n" + mill)
        .times(2)
        .measured(2443, 2444);
  }
}
