package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** How the frame's lowest line stands to the floor. */
class PlateOnFloorTest {

  private static String wall(double angle, double raise) {
    return "[wall]\nraise = " + raise + "\n[[facet]]\nangle = " + angle + "\n";
  }

  @Test
  void passesOnTheFloor() {
    Found.by("plate-floor", wall(0, 0)).isNothing();
    Found.by("plate-floor", wall(0, 45)).isNothing();
  }

  @Test
  void findsASlabWhoseFrameStandsInTheFloor() {
    // (18 + 90) sin 10° = 18.754003 (sine from a table, 0.17364818)
    Found.by("plate-floor", wall(-10, 0))
        .times(1)
        .isError(true)
        .between("PL1", "")
        .measured(-108 * 0.17364817766693, 0)
        .suggests("let the wall begin at least 19 mm above the floor ([wall] raise = 19)");
  }

  @Test
  void tellsOfPackingUnderThePlate() {
    // 30 mm are too little for a plate of 45 below the facet
    Found.by("plate-floor", wall(0, 30))
        .times(1)
        .isError(false)
        .between("PL1", "")
        .measured(30, 0)
        .suggests("raise the wall by at least 15 mm for a plate on the floor ([wall] raise)");
  }

  @Test
  void passesOnceASlabIsRaisedEnough() {
    Found.by("plate-floor", wall(-10, 19)).isNothing();
  }

  @Test
  void tellsOfARoofThatStandsOnNothing() {
    Found.by("plate-floor", "[wall]\nraise = 2500\n[[facet]]\nangle = 90\n")
        .times(1)
        .isError(false)
        .between("PL1", "")
        .says(
            "facet main leans out so far that its frame does not stand on the floor: it ends"
                + " 2500 mm above it")
        .suggests("put a facet below it that stands, or have what it hangs from designed");
    Found.by("plate-floor", "[[facet]]\nlength = 400\n[[facet]]\nangle = 90\n").isNothing();
  }

  /** Rails of 140 mm lie under what stands on posts. */
  @Test
  void aFrameInItsRailsIsRaisedOnToThem() {
    String posts = "[support]\nkind = \"freestanding\"\n";
    Found.by("plate-floor", wall(0, 0) + posts)
        .times(1)
        .isError(true)
        .measured(-140, 0)
        .says(
            "facet main stands on the rails under the posts, and would stand 140 mm deep "
                + "in them")
        .suggests("let the wall begin at least 140 mm above the floor ([wall] raise = 140)");
    Found.by("members-overlap", wall(0, 0) + posts)
        .suggests("raise the wall on to the rails under its posts ([wall] raise = 140)");
    Found.by("plate-floor", wall(0, 140) + posts).isNothing();
    Found.by("members-overlap", wall(0, 140) + posts).isNothing();
  }
}
