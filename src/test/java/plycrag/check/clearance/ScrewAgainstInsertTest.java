package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Screws of 4.5 mm along the stud at 600 mm, one of them 600 mm up. */
class ScrewAgainstInsertTest {

  @Test
  void passesBeyondTheLeastDistance() {
    // 21 - 13 - 2.25 = 5.75
    Found.by("screw-insert", Found.bay("621", "600")).isNothing();
  }

  @Test
  void findsAFlangeNearAScrew() {
    // 20 - 13 - 2.25 = 4.75, 0.25 short: 1 on the marking grid
    Found.by("screw-insert", Found.bay("620", "600"))
        .times(1)
        .isError(true)
        .at(620, 600)
        .between("main 62/60", "main 60/60")
        .measured(4.75, 5)
        .says(
            "the flange of insert main 62/60 is 4.75 mm from screw main 60/60 in ST2;"
                + " 5 mm must remain")
        .suggests("move column 1 right by 1 mm");
  }
}
