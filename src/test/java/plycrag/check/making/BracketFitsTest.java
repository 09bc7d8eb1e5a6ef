package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Six ends of studs of 45 by 90 on plates. */
class BracketFitsTest {

  @Test
  void passesWhatTheCatalogueHas() {
    Found.by("bracket-fits", Found.BAY).isNothing();
    Found.by("bracket-fits", Found.BAY + "[joints]\nbracket-screws = 12\n").isNothing();
  }

  /** Seven screws a leg: four rows of the broadest, whose two lines leave 30 of 35 at the sides. */
  @Test
  void saysWhatWouldDo() {
    Found.by("bracket-fits", Found.BAY + "[joints]\nbracket-screws = 14\n")
        .times(1)
        .isError(false)
        .says(
            "the catalogue has no bracket or strap for ST1 and PL1 and at 5 more joints (end on side)")
        .suggests(
            "one at most 90 mm wide, with legs of at most 200 mm and holes for screws of 5 mm from"
                + " 35 mm on would do");
  }

  /** 6 × 3 mm = 18 deep and 5 before the far side are more than 20. */
  @Test
  void saysWhereTimberIsTooNarrow() {
    Found.by("bracket-fits", Found.SEAMED + "section = [20, 60]\n")
        .suggests(
            "no screw of 3 mm or thicker keeps its distances there and stays inside; choose broader"
                + " timber, or screw a plate of plywood over both");
  }
}
