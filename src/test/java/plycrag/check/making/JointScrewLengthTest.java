package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Two studs of 45 side by side at a seam: with 5 mm screws 75 to 85 long, worked by hand. */
class JointScrewLengthTest {
  private static final String SCREWS = "[joints]\nscrew-length = ";

  @Test
  void passesBetweenTheTwoLimits() {
    Found.by("joint-screw-length", Found.SEAMED + SCREWS + "75").isNothing();
    Found.by("joint-screw-length", Found.SEAMED + SCREWS + "85").isNothing();
  }

  @Test
  void passesWhereNothingLiesSideBySide() {
    Found.by("joint-screw-length", Found.BAY + SCREWS + "20").isNothing();
  }

  @Test
  void findsScrewsThatAreTooShort() {
    Found.by("joint-screw-length", Found.SEAMED + SCREWS + "74")
        .times(1)
        .isError(true)
        .measured(29, 30)
        .says(
            "screws of 74 mm through a member of 45 mm bite 29 mm into the second; 30 mm are"
                + " required")
        .suggests("choose screws of 75 mm to 85 mm ([joints] screw-length = 80)");
  }

  @Test
  void findsScrewsThatAreTooLong() {
    Found.by("joint-screw-length", Found.SEAMED + SCREWS + "86").times(1).measured(4, 5);
  }
}
