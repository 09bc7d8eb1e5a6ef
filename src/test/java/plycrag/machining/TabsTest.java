package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.document.Xy;

class TabsTest {
  private static CutPath rectangle(double width, double height) {
    return new CutPath(
        List.of(new Xy(0, 0), new Xy(width, 0), new Xy(width, height), new Xy(0, height)), true);
  }

  /** Evenly they stand at 250, 750, 1250 and 1750 of 2000 mm: none is near a corner, 18 mm wide. */
  @Test
  void standEvenly() {
    Tabs tabs = Tabs.along(rectangle(600, 400), 18, -14, 6);
    assertThat(tabs.stations()).containsExactly(241.0, 741.0, 1241.0, 1741.0);
  }

  /** At 300 of 600 mm is a corner: the tab ends 6 mm before it, or begins 6 mm after. */
  @Test
  void keepOffCorners() {
    Tabs tabs = Tabs.along(rectangle(150, 150), 18, -14, 6);
    assertThat(tabs.stations()).hasSize(3);
    assertThat(tabs.stations().get(1)).isIn(276.0, 306.0);
  }

  /** All along ways of many sizes: off each corner by the tool's diameter, and off each other. */
  @Test
  void keepOffCornersOfRectanglesOfAllSizes() {
    for (int width = 90; width < 2500; width += 37) {
      CutPath path = rectangle(width, 120);
      Tabs tabs = Tabs.along(path, 18, -14, 6);
      assertThat(tabs.stations().size())
          .isEqualTo(Math.max(3, (int) Math.ceil(path.length() / 500)));
      for (double corner : List.of(0.0, (double) width, width + 120.0, 2 * width + 120.0)) {
        assertThat(tabs.stations())
            .as("%s wide, corner at %s", width, corner)
            .noneMatch(tab -> tab < corner + 6 - 1e-6 && tab + 18 > corner - 6 + 1e-6);
      }
    }
  }

  /** From -14 down to -18.5 over 15 mm; on a pass at -17 the slope ends after 10. */
  @Test
  void slopeAfterwardsIfAsked() {
    CutPath path = rectangle(600, 400);
    Tabs tabs = Tabs.along(path, 18, -14, 6).sloping(15, -18.5, path);
    assertThat(tabs.ends(240, 300, 2000, -17)).contains(241.0, 259.0, 269.0, 274.0);
    assertThat(tabs.floor(250, 250, 2000)).isEqualTo(-14);
    assertThat(tabs.floor(259, 260, 2000)).isCloseTo(-14, within(1e-9));
    assertThat(tabs.floor(269, 264, 2000)).isCloseTo(-17, within(1e-9));
    assertThat(tabs.floor(275, 275, 2000)).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  /** Between tabs of a small piece half of the way at least is cut to the bottom. */
  @Test
  void slopeNoFartherThanHalfwayToTheNext() {
    CutPath path = rectangle(60, 30);
    Tabs tabs = Tabs.along(path, 18, -14, 6).sloping(60, -18.5, path);
    assertThat(tabs.slope().length()).isLessThanOrEqualTo((180 - 3 * 18) / 3.0 / 2);
  }

  @Test
  void areAsWideAsAskedWhereThereIsRoom() {
    assertThat(Tabs.along(rectangle(200, 100), 18, -14, 6).width()).isCloseTo(18, within(1e-9));
    assertThat(Tabs.along(rectangle(10, 8), 18, -14, 6).width()).isCloseTo(6, within(1e-9));
  }
}
