package plycrag.check.making;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

/** Holes of 12 mm at 100 and 300 across, 100 and 250 up; the piece's corner is at 1200, 1200. */
class KeepOutsKeptTest {
  private static final String WALL =
      """
      [[facet]]
      width = 1200
      length = 1200
      [inserts]
      pattern = "lines"
      columns = [100, 300]
      rows = [100, 250]
      [[tool]]
      diameter = 12
      length = 30
      [[tool]]
      kind = "end-mill"
      diameter = 6
      length = 22
      """;

  private static String clamp(double left, double low, double rise) {
    String place =
        "[[keep-out]]\nname = \"clamp\"\nleft = %s\nlow = %s\nwidth = 60\nheight = 40\nrise = %s\n";
    return place.formatted(left, low, rise);
  }

  /** From 107 across: 1 mm beside the hole's edge. */
  @Test
  void passesBesideHoles() {
    Found.by("keep-out", WALL + clamp(107, 80, 20)).isNothing();
    Found.by("keep-out", WALL + clamp(-30, 500, 24.9)).isNothing();
  }

  @Test
  void tellsOfAHoleUnderIt() {
    Found.by("keep-out", WALL + clamp(104, 80, 20))
        .times(1)
        .isError(true)
        .between("main 10/10", "clamp")
        .measured(-2, 0)
        .at(100, 100)
        .says("the tool for hole main 10/10 on sheet S1 overlaps clamp by 2 mm");
  }

  @Test
  void tellsOfOneThatNoToolClears() {
    Found.by("keep-out", WALL + clamp(-30, 500, 25))
        .times(1)
        .measured(25, 25)
        .says("clamp stands 25 mm above the sheet, and tools pass over it at 25 mm");
  }

  /** The mill goes along 1203 mm, 3 mm wide on either side. */
  @Test
  void tellsOfACutThroughIt() {
    Found.by("keep-out", WALL + clamp(1207, 500, 20)).isNothing();
    String cutOut = "[machine]\noutlines = \"tabs\"\n";
    Found.by("keep-out", WALL + clamp(1207, 500, 20) + cutOut).isNothing();
    Found.by("keep-out", WALL + clamp(1205, 500, 20) + cutOut)
        .times(1)
        .between("P1", "clamp")
        .says("end mill T2 meets clamp on its way round piece P1");
  }
}
