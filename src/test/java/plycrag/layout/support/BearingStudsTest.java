package plycrag.layout.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;

/** Where ties meet a plumb wall of 2000 that is fixed: in 45 by 90, with plywood of 18. */
class BearingStudsTest {
  private static Layout wall(String inserts) {
    return Walls.laidOut(
        "[[facet]]\nlength = 2000\nwidth = 1200\n"
            + "[support]\nkind = \"fixed\"\nfixed-to = \"masonry\"\n[inserts]\n"
            + inserts);
  }

  /** The heights of the undersides and the tops of all ties. */
  private static List<Double> heights(Layout layout) {
    return layout.support().orElseThrow().members().stream()
        .filter(placed -> placed.member().role() == MemberRole.TIE)
        .flatMapToDouble(BearingStudsTest::reach)
        .map(z -> Math.round(z * 1000) / 1000.0)
        .distinct()
        .sorted()
        .boxed()
        .toList();
  }

  private static DoubleStream reach(PlacedMember placed) {
    return placed.body().near().stream().mapToDouble(Vector3::z);
  }

  /** 45 (a plate) and 120 below 2000 is their top, if nothing is beside the outer studs. */
  @Test
  void tiesLieBelowThePlate() {
    assertThat(heights(wall("pitch-across = 600\npitch-up = 600\n")))
        .containsExactly(1745.0, 1835.0);
  }

  /**
   * Inserts 75 from the side are 52.5 from the middle of a stud: 22.5 of timber, 18 of plywood and
   * the insert's own 17 are 57.5. The fourth row is at 75 + 3 · 575 = 1800; plywood of 210 keeps
   * 105 and 17 off it, so that the middle of a tie, wished at 1790, is below 1678, its top below
   * 1723.
   */
  @Test
  void tiesLieBelowTheInsertsBesideTheirStuds() {
    assertThat(heights(wall("setback = 75\npitch-across = 525\npitch-up = 575\n")))
        .containsExactly(1632.0, 1722.0);
  }

  /** Rows at 1575 and 1825 leave 1697 to 1703 for the middle, whose top is below 1748. */
  @Test
  void tiesLieBetweenTwoRows() {
    assertThat(heights(wall("setback = 75\npitch-across = 525\npitch-up = 250\n")))
        .containsExactly(1657.0, 1747.0);
  }

  /** 57.5 from the middle of a stud there is room beside the row at 80 + 3 · 575 = 1805. */
  @Test
  void insertsFurtherFromTheStudLeaveTiesAlone() {
    assertThat(heights(wall("setback = 80\npitch-across = 520\npitch-up = 575\n")))
        .containsExactly(1745.0, 1835.0);
  }

  /**
   * Rows 180 apart, each of which takes twice 92, leave no room: the tie stays, and others tell.
   */
  @Test
  void whereThereIsNoRoomTiesStay() {
    assertThat(heights(wall("setback = 75\npitch-across = 525\npitch-up = 180\n")))
        .containsExactly(1745.0, 1835.0);
  }
}
