package plycrag.layout.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.locationtech.jts.geom.Point;
import plycrag.Walls;
import plycrag.check.Inspection;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.LayoutPlan;
import plycrag.read.WallMaker;
import plycrag.wall.InsertPosition;

/** Inserts at listed places. */
class PlacedPatternTest {
  private static final String WALL =
      """
      [[facet]]
      name = "loft"
      width = 1200
      length = 1200
      [frame]
      stud-spacing = 600
      [inserts]
      pattern = "file"
      positions = "loft.csv"
      when-blocked = "%s"
      """;

  private static Layout layout(String whenBlocked, List<InsertPosition> positions) {
    return LayoutPlan.of(WallMaker.of(Walls.parameters(WALL.formatted(whenBlocked)), positions));
  }

  private static List<String> places(String whenBlocked, InsertPosition... positions) {
    return layout(whenBlocked, List.of(positions)).inserts().stream()
        .map(insert -> insert.centre().getX() + " " + insert.centre().getY())
        .toList();
  }

  private static InsertPosition at(double u, double v) {
    return new InsertPosition("loft", u, v);
  }

  /**
   * By hand: the middle stud takes 577.5 to 622.5 mm; a flange of 26 mm needs 4 mm more, so a
   * centre stands at 560 or at 640 mm, on the marking grid.
   */
  @Example
  void aBlockedOneMovesToTheNearestClearPlace() {
    assertThat(places("nudge", at(590, 300))).containsExactly("560.0 300.0");
    assertThat(places("nudge", at(601, 300))).containsExactly("640.0 300.0");
    assertThat(places("nudge", at(600, 300))).containsExactly("560.0 300.0");
    assertThat(places("drop", at(590, 300))).isEmpty();
    assertThat(places("report", at(590, 300))).containsExactly("590.0 300.0");
  }

  @Example
  void aShiftMovesAllByOneAmount() {
    assertThat(places("shift", at(300, 300), at(590, 300)))
        .containsExactly("270.0 300.0", "560.0 300.0");
  }

  @Example
  void placesAreRoundedToTheMarkingGrid() {
    assertThat(places("nudge", at(300.4, 299.6))).containsExactly("300.0 300.0");
  }

  @Example
  void oneOffTheFaceIsLeftOutAndSaid() {
    Layout layout = layout("nudge", List.of(at(300, 300), at(1500, 300)));
    assertThat(layout.inserts()).hasSize(1);
    assertThat(Inspection.of(layout).findings().stream().map(Finding::rule))
        .contains("insert-left-out");
  }

  @Property(tries = 40)
  void movesAreSmallAndLoseNothingThatStaying(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int count) {
    Random random = new Random(seed);
    List<InsertPosition> positions = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      positions.add(at(random.nextInt(100, 1101), random.nextInt(100, 1101)));
    }
    Layout layout = layout("solve", positions);
    assertThat(Inspection.of(layout).findings().stream().filter(Finding::isError)).isEmpty();
    assertThat(layout.inserts().size())
        .isGreaterThanOrEqualTo(layout("drop", positions).inserts().size());
    for (Insert insert : layout.inserts()) {
      Point centre = insert.centre();
      assertThat(positions)
          .anyMatch(one -> Math.hypot(one.u() - centre.getX(), one.v() - centre.getY()) <= 75);
    }
  }
}
