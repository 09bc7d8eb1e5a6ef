package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.Layout;

/** Scattered inserts on a wall: nothing in their way, and apart by brute force. */
class ScatterPatternTest {
  private static final String WALL =
      """
      [[facet]]
      angle = %s
      width = 2440
      length = 2440
      [[cutout]]
      centre = [600, 1500]
      diameter = 300
      [inserts]
      pattern = "scatter"
      scatter-spacing = 170
      scatter-seed = %s
      """;

  @Property(tries = 15)
  void nothingStandsInTheirWay(
      @ForAll @IntRange(min = -10, max = 40) int angle,
      @ForAll @IntRange(min = 0, max = 1000) int seed) {
    Layout layout = Walls.laidOut(WALL.formatted(angle, seed));
    assertThat(Inspection.of(layout).findings().stream().map(Finding::rule))
        .doesNotContain("insert-timber", "insert-edge", "hole-outside", "insert-screw", "setback");
    List<Insert> inserts = layout.inserts();
    assertThat(inserts).hasSizeGreaterThan(40);
    for (int at = 0; at < inserts.size(); at++) {
      for (Insert other : inserts.subList(at + 1, inserts.size())) {
        assertThat(inserts.get(at).centre().distance(other.centre()))
            .isGreaterThanOrEqualTo(170 - 0.002);
      }
    }
  }
}
