package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Three diameters of 4.5 mm to the side of a member (EN 1995-1-1 Table 8.2). */
class ScrewAgainstMemberEdgeTest {

  @Test
  void passesOnDoubledStuds() {
    Found.by("screw-member-edge", Found.SEAMED).isNothing();
  }

  @Test
  void findsScrewsOfASharedStud() {
    // the stud begins at 601 - 22.5 = 578.5 and the screw is at 589
    Found.by("screw-member-edge", Found.SEAMED + "seams = \"shared\"")
        .isError(true)
        .at(589, 77)
        .between("main 59/8", "ST2")
        .measured(10.5, 13.5)
        .says(
            "screw main 59/8 through P1 into ST2 is 10.5 mm from the side of ST2;"
                + " 13.5 mm must remain")
        .suggests(
            "back the seams with doubled members ([frame] seams = \"doubled\"), or "
                + "choose broader timber ([frame] section) or thinner screws ([screws] "
                + "diameter)");
  }

  @Test
  void passesOnASharedStudWithThinScrews() {
    // three diameters of 3.5 are 10.5: 21.5 of bearing hold the screw between both edges
    String thin = "seams = \"shared\"\n[screws]\ndiameter = 3.5\nlength = 45";
    Found.by("screw-member-edge", Found.SEAMED + thin).isNothing();
  }
}
