package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Three diameters of 4.5 mm to the edge of a piece (EN 1995-1-1 Table 8.2). */
class ScrewAgainstSheetEdgeTest {

  @Test
  void passesOnDoubledStuds() {
    Found.by("screw-sheet-edge", Found.SEAMED).isNothing();
  }

  @Test
  void findsScrewsOfASharedStud() {
    // P1 bears on 578.5 to 600; its middle 589.25 goes to 589 toward the nearer edge: 600 - 589
    Found.by("screw-sheet-edge", Found.SEAMED + "seams = \"shared\"")
        .isError(true)
        .at(589, 77)
        .between("main 59/8", "P1")
        .measured(11, 13.5)
        .says(
            "screw main 59/8 through P1 into ST2 is 11 mm from the edge of P1; 13.5 mm must remain")
        .suggests(
            "back the seams with doubled members ([frame] seams = \"doubled\"), or "
                + "choose thinner screws ([screws] diameter)");
  }

  @Test
  void wantsMoreWithoutPilotHoles() {
    // five diameters: 22.5; the doubled stud's middle 601 - 22.5 = 578.5 goes to 578
    Found.by("screw-sheet-edge", Found.SEAMED + "[screws]\npredrilled = false").measured(22, 22.5);
  }

  @Test
  void passesOnASharedStudWithThinScrews() {
    // three diameters of 3.5 are 10.5: 21.5 of bearing hold the screw between both edges
    String thin = "seams = \"shared\"\n[screws]\ndiameter = 3.5\nlength = 45";
    Found.by("screw-sheet-edge", Found.SEAMED + thin).isNothing();
  }
}
