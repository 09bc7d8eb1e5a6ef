package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/**
 * Screws of 4.5 mm through 18 mm into 90 mm: 45 to 103 mm long; 5 mm through 45 mm: 75 to 85 mm.
 */
class ScrewSoldTest {

  @Test
  void passesWhatIsSold() {
    Found.by("screw-sold", Found.SEAMED).isNothing();
    Found.by("screw-sold", Found.BAY + "[screws]\ndiameter = 5\nlength = 60").isNothing();
    Found.by("screw-sold", Found.BAY + "[joints]\nscrew-length = 77").isNothing();
  }

  @Test
  void namesTheShortestThatIsSoldAndDoes() {
    Found.by("screw-sold", Found.BAY + "[screws]\nlength = 47")
        .times(1)
        .isError(false)
        .says("the catalogue has no screw of 4.5 x 47 mm for sheet to frame")
        .suggests("choose one of 4.5 x 45 mm ([screws] length) or make sure of yours");
    Found.by("screw-sold", Found.SEAMED + "[joints]\nscrew-length = 77")
        .times(1)
        .says("the catalogue has no screw of 5 x 77 mm for member to member")
        .suggests("choose one of 5 x 80 mm ([joints] screw-length) or make sure of yours");
  }

  /** Six diameters of 5.4 mm are 32.4, and with the sheet 50.4. */
  @Test
  void saysWhatWouldDoWhereNothingIsSold() {
    Found.by("screw-sold", Found.BAY + "[screws]\ndiameter = 5.4\nlength = 60")
        .times(1)
        .suggests(
            "one of 5.4 mm and 51 mm to 103 mm would do; choose another diameter or find one");
  }

  /** Through 45 mm a screw of 8 mm takes 93 mm and comes out at 85. */
  @Test
  void saysWhereNoLengthWouldDo() {
    Found.by("screw-sold", Found.SEAMED + "[joints]\nscrew-diameter = 8\nscrew-length = 85")
        .times(1)
        .suggests("no length of 8 mm would do; choose a thinner screw");
  }
}
