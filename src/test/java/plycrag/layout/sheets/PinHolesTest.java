package plycrag.layout.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plycrag.Walls;
import plycrag.layout.Layout;

/** Pins on the upright middle line of a sheet 1220 mm high. */
class PinHolesTest {
  private static final String WALL =
      """
      [[facet]]
      width = 2000
      length = %s
      [inserts]
      when-blocked = "drop"
      [nesting]
      edge-trim = %s
      [machine]
      marks = "behind"
      [[tool]]
      kind = "engraver"
      diameter = 6
      length = 6
      [[tool]]
      diameter = 6
      length = 30
      [[tool]]
      diameter = 12
      length = 30
      """;

  private static WorkedFace back(String length, String trim) {
    Layout layout = Walls.laidOut(WALL.formatted(length, trim));
    return layout.faces().get(0);
  }

  private static List<Double> heights(WorkedFace face) {
    return face.sheet().holes(MachinedHole.Kind.PIN).stream().map(hole -> hole.spot().y()).toList();
  }

  /** Turned from below upward a hole at y comes to 1220 - y: by 6 mm or more beside the other. */
  @ParameterizedTest
  @ValueSource(strings = {"1000 30", "1140 40", "1100 60"})
  void fitOneTurningAlone(String sizes) {
    String[] size = sizes.split(" ", -1);
    WorkedFace back = back(size[0], size[1]);
    List<Double> heights = heights(back);
    assertThat(heights).hasSize(2);
    assertThat(Math.abs(1220 - heights.get(0) - heights.get(1))).isGreaterThanOrEqualTo(6);
    assertThat(back.fitsPinsOneWay(Walls.laidOut(WALL.formatted(size[0], size[1])).wall()))
        .isTrue();
  }

  /** 17 mm at either edge leave one place for each. */
  @Test
  void standAsFarFromBothEdgesWhereThereIsNoOtherRoom() {
    WorkedFace back = back("1186", "17");
    assertThat(heights(back)).containsExactly(12.0, 1208.0);
    assertThat(back.fitsPinsOneWay(Walls.laidOut(WALL.formatted("1186", "17")).wall())).isFalse();
  }
}
