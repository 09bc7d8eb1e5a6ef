package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class SeamToleranceTest {
  private static final String ROW =
      """
      [[facet]]
      width = 4870
      length = 1220
      [sheet]
      lay = "up"
      edges = "%s"
      size-tolerance = 2
      squareness = 3
      [frame]
      seams = "%s"
      """;

  @Test
  void passesWhereSheetsAreTrimmed() {
    Found.by("seam-tolerance", ROW.formatted("trimmed", "shared")).isNothing();
  }

  /** Three seams of 5 mm each: 45 less half a gap and 15 are 29, and 27 are needed. */
  @Test
  void passesWhereDoubledTimberIsBroadEnough() {
    Found.by("seam-tolerance", ROW.formatted("as-bought", "doubled")).isNothing();
  }

  /** Half of 45 less half a gap and 5, 10, 15. */
  @Test
  void addsUpAlongTheRow() {
    Found.by("seam-tolerance", ROW.formatted("as-bought", "shared"))
        .times(3)
        .isError(true)
        .suggests(
            "trim the sheets true ([sheet] edges), or back the seams more broadly ([frame]"
                + " seams)");
  }
}
