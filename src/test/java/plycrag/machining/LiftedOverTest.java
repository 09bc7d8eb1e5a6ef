package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.solve.tour.Metric;
import plycrag.wall.machine.KeepOut;
import plycrag.wall.machine.Machine.Origin;

/**
 * A clamp from 190 to 210 mm across and from 0 to 260 mm up; the tool is 12 mm wide, so that its
 * middle keeps 7 mm off. From 5 mm over the sheet to 25 mm and down again are 40 mm.
 */
class LiftedOverTest {
  private static final KeepOut CLAMP =
      new KeepOut("clamp", new KeepOut.Corner(190, 0), new KeepOut.Size(20, 260), 15);
  private static final SheetOrigin CORNER = new SheetOrigin(Origin.LOWER_LEFT, 0, 0);

  private static LiftedOver over(SheetOrigin origin) {
    return new LiftedOver(List.of(CLAMP), 6, 25, origin);
  }

  private static int lifts(List<Xy> way) {
    List<Move> moves = new ArrayList<>();
    way.forEach(place -> moves.add(new Move.DrillCycle(place, 5, -18, 0, 600)));
    return over(CORNER).of(moves).size() - moves.size();
  }

  @Test
  void aLiftCountsAsTheWayUpAndDown() {
    Metric metric = over(CORNER).metric(5);
    assertThat(metric.length(100, 100, 300, 100)).isCloseTo(240, within(1e-9));
    assertThat(metric.length(300, 100, 100, 100)).isCloseTo(240, within(1e-9));
    assertThat(metric.length(100, 300, 300, 300)).isCloseTo(200, within(1e-9));
    assertThat(metric.length(100, 266.9, 300, 266.9)).isCloseTo(240, within(1e-9));
    assertThat(metric.length(100, 267.1, 300, 267.1)).isCloseTo(200, within(1e-9));
    assertThat(metric.length(0, 0, 300, 0)).isCloseTo(300, within(1e-9));
    assertThat(
            over(new SheetOrigin(Origin.LOWER_RIGHT, 2440, 0)).metric(5).length(-2340, 9, -2140, 9))
        .isCloseTo(240, within(1e-9));
    assertThat(over(CORNER).metric(25)).isSameAs(Metric.STRAIGHT);
  }

  /**
   * Three by two holes 200 mm apart: row by row and column by column are as long, but for the clamp
   * between the columns, which reaches over the lower two rows.
   */
  @Test
  void ofToursThatAreAsLongTheOneWithFewerLiftsIsTaken() {
    List<Xy> holes = new ArrayList<>();
    for (int row = 0; row < 3; row++) {
      holes.add(new Xy(100, 50 + 200 * row));
      holes.add(new Xy(300, 50 + 200 * row));
    }
    List<Xy> way = HoleTour.of(holes, over(CORNER).metric(5));
    assertThat(way)
        .containsExactly(
            new Xy(100, 50),
            new Xy(100, 250),
            new Xy(100, 450),
            new Xy(300, 450),
            new Xy(300, 250),
            new Xy(300, 50));
    assertThat(lifts(way)).isZero();
    assertThat(lifts(HoleTour.of(holes, Metric.STRAIGHT))).isPositive();
    assertThat(lifts(List.of(new Xy(100, 50), new Xy(300, 50), new Xy(300, 250), new Xy(100, 250))))
        .isEqualTo(2);
  }
}
