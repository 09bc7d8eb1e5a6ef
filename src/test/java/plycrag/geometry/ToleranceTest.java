package plycrag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class ToleranceTest {
  /** What ten tenths come to in doubles is less than one. */
  private static double tenTenths() {
    double sum = 0;
    for (int step = 0; step < 10; step++) {
      sum += 0.1;
    }
    return sum;
  }

  @Test
  void sumsAreWhatTheyAreOnPaper() {
    assertThat(tenTenths()).isNotEqualTo(1);
    assertThat(Tolerance.same(tenTenths(), 1)).isTrue();
    assertThat(Tolerance.atLeast(tenTenths(), 1)).isTrue();
    assertThat(Tolerance.atMost(1, tenTenths())).isTrue();
    assertThat(Tolerance.isLess(tenTenths(), 1)).isFalse();
    assertThat(Tolerance.isMore(1, tenTenths())).isFalse();
    assertThat(Tolerance.isSome(1 - tenTenths())).isFalse();
  }

  @Test
  void aStepOfTheGridIsADifference() {
    assertThat(Tolerance.same(1, 1 + Tolerance.GRID)).isFalse();
    assertThat(Tolerance.atMost(1 + Tolerance.GRID, 1)).isFalse();
    assertThat(Tolerance.atLeast(1 - Tolerance.GRID, 1)).isFalse();
    assertThat(Tolerance.isMore(1 + Tolerance.GRID, 1)).isTrue();
    assertThat(Tolerance.isLess(1 - Tolerance.GRID, 1)).isTrue();
    assertThat(Tolerance.isSome(Tolerance.GRID)).isTrue();
  }

  @Test
  void wholeStepsStayAsMany() {
    assertThat(Tolerance.wholeUp(0.3 / 0.1)).isEqualTo(3);
    assertThat(Tolerance.wholeUp((0.1 + 0.2) / 0.1)).isEqualTo(3);
    assertThat(Tolerance.wholeDown(0.3 / 0.1)).isEqualTo(3);
    assertThat(Tolerance.wholeUp(3.001)).isEqualTo(4);
    assertThat(Tolerance.wholeDown(2.999)).isEqualTo(2);
  }

  /** Half a step aslant for each of two places is the most that the grid moves them. */
  @Test
  void placesOnTheGridAreNearerToTheirOwnThanTheirTolerance() {
    Coordinate one = Shapes.point(0.000499, 0.000499).getCoordinate();
    Coordinate other = Shapes.point(1.000501, 1.000501).getCoordinate();
    double meant = new Coordinate(0.000499, 0.000499).distance(new Coordinate(1.000501, 1.000501));
    assertThat(Math.abs(one.distance(other) - meant))
        .isGreaterThan(Tolerance.GRID)
        .isLessThan(Tolerance.OFF_GRID);
  }
}
