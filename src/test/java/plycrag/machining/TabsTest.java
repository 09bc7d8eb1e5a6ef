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

  @Test
  void areAsWideAsAskedWhereThereIsRoom() {
    assertThat(Tabs.along(rectangle(200, 100), 18, -14, 6).width()).isCloseTo(18, within(1e-9));
    assertThat(Tabs.along(rectangle(10, 8), 18, -14, 6).width()).isCloseTo(6, within(1e-9));
  }
}
