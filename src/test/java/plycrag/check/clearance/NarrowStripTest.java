package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Openings so near to a side of a facet that no timber and no screw fits between them. */
class NarrowStripTest {
  private static final String OPENING =
      """

      [[cutout]]
      name = "socket"
      left = %s
      low = %s
      width = 300
      height = 300
      filled = true
      """;

  private static final String CURE =
      "let cutout socket go up to the side of facet main, or leave at least 45 mm between them"
          + " ([[cutout]])";

  private static String wall(String left, String low) {
    return Found.BAY + OPENING.formatted(left, low);
  }

  /** Five mm from both sides of a strip of ten, which thinner screws would not mend. */
  @Test
  void screwsInAStripAreToldWhatItLacks() {
    Found.by("screw-sheet-edge", wall("400", "10")).isError(true).suggests(CURE);
    Found.by("screw-sheet-edge", wall("400", "0")).isNothing();
    Found.by("screw-sheet-edge", wall("400", "45")).isNothing();
  }

  @Test
  void soAreEdgesWithoutTimber() {
    Found.by("seam-backing", wall("10", "400")).isError(true).suggests(CURE);
    Found.by("seam-backing", wall("0", "400")).isNothing();
    Found.by("seam-backing", wall("45", "400")).isNothing();
  }
}
