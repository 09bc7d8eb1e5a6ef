package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Screws of 4.5 mm through 18 mm into timber 90 mm deep. */
class ScrewLengthTest {

  private static String screws(double length) {
    return Found.BAY + "[screws]\nlength = " + length;
  }

  @Test
  void passesBetweenTheLimits() {
    // six diameters are 27: from 18 + 27 to 18 + 90 - 5
    Found.by("screw-length", screws(45)).isNothing();
    Found.by("screw-length", screws(103)).isNothing();
  }

  @Test
  void findsAScrewThatHoldsNothing() {
    Found.by("screw-length", screws(40))
        .times(1)
        .isError(true)
        .between("", "")
        .measured(22, 27)
        .says("a screw of 40 mm through the sheet bites 22 mm into the timber; 27 mm are required")
        .suggests("choose screws of at least 45 mm ([screws] length = 45)");
  }

  @Test
  void findsAScrewThatComesOut() {
    // 90 - (110 - 18) = -2
    Found.by("screw-length", screws(110))
        .times(1)
        .isError(true)
        .between("", "PL1")
        .measured(-2, 5)
        .says("a screw of 110 mm ends 2 mm beyond the far side of PL1; 5 mm must remain")
        .suggests("choose screws of at most 103 mm ([screws] length = 103)");
  }

  @Test
  void measuresToTheMillimetre() {
    Found.by("screw-length", screws(44)).times(1).measured(26, 27);
    Found.by("screw-length", screws(104)).times(1).measured(4, 5);
  }
}
