package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Seven diameters of 4.5 mm to the end of a member (EN 1995-1-1 Table 8.2). */
class ScrewAgainstMemberEndTest {

  /** A seam at 601 mm up, backed by blocking between the studs. */
  private static final String NARROW =
      """
      [wall]
      name = "Narrow"
      [[facet]]
      width = 300
      length = 1202
      [sheet]
      length = 600
      width = 600
      [frame]
      """;

  @Test
  void passesWhereBlockingIsLong() {
    Found.by("screw-member-end", NARROW + "stud-spacing = 300").isNothing();
  }

  @Test
  void findsScrewsOfShortBlocking() {
    // studs at 0 to 45 and 77.5 to 122.5: the screw at 61.25 goes to 61, which is 16 from an end
    Found.by("screw-member-end", NARROW + "stud-spacing = 100")
        .isError(true)
        .at(61, 578)
        .between("main 6/58", "BL1")
        .measured(16, 31.5)
        .says(
            "screw main 6/58 through P1 into BL1 is 16 mm from the end of BL1; 31.5 mm must remain")
        .suggests(
            "set the studs further apart ([frame] stud-spacing), or choose thinner "
                + "screws ([screws] diameter)");
  }
}
