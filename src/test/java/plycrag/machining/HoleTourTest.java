package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import plycrag.document.Xy;
import plycrag.solve.tour.Metric;

class HoleTourTest {
  private static final Xy CORNER = new Xy(0, 0);

  @Provide
  Arbitrary<List<Xy>> sheets() {
    return places(24).list().ofMaxSize(60);
  }

  /** So narrow that many holes lie in one place, on a line, or on the corner. */
  @Provide
  Arbitrary<List<Xy>> crowds() {
    return places(2).list().ofMaxSize(25);
  }

  private static Arbitrary<Xy> places(int most) {
    return Arbitraries.integers()
        .between(0, most)
        .tuple2()
        .map(pair -> new Xy(pair.get1() * 100, pair.get2() * 50));
  }

  @Property(tries = 100)
  void visitsEveryHoleOnceAndNeverGoesFurtherThanNearestNeighbour(
      @ForAll("sheets") List<Xy> holes) {
    holds(holes);
  }

  @Property(tries = 100)
  void soItDoesWhereHolesCoincide(@ForAll("crowds") List<Xy> holes) {
    holds(holes);
  }

  private static void holds(List<Xy> holes) {
    List<Xy> tour = HoleTour.of(holes, Metric.STRAIGHT);
    assertThat(tour).containsExactlyInAnyOrderElementsOf(holes);
    assertThat(length(tour)).isLessThanOrEqualTo(length(nearestNeighbour(holes)) + 1e-5);
    assertThat(HoleTour.of(holes, Metric.STRAIGHT)).isEqualTo(tour);
  }

  @Test
  void goesStraightAlongALine() {
    List<Xy> line =
        IntStream.range(1, 200).mapToObj(at -> new Xy(10 * (at * 83 % 200), 0)).toList();
    List<Xy> sorted = line.stream().sorted(Comparator.comparingDouble(Xy::x)).toList();
    assertThat(HoleTour.of(line, Metric.STRAIGHT)).isEqualTo(sorted);
  }

  @Test
  void takesHolesThatAllLieInOnePlace() {
    List<Xy> holes = Collections.nCopies(30, new Xy(7, 7));
    assertThat(HoleTour.of(holes, Metric.STRAIGHT)).isEqualTo(holes);
  }

  /** A grid is gone through row by row: its shortest way has every step a pitch long. */
  @Test
  void makesNoStepOfAGridLongerThanItsPitch() {
    List<Xy> grid =
        IntStream.range(0, 12 * 7)
            .mapToObj(at -> new Xy(100 + 200 * (at % 12), 100 + 200 * (at / 12)))
            .toList();
    assertThat(length(HoleTour.of(grid, Metric.STRAIGHT)))
        .isBetween(
            100 * Math.sqrt(2) + 200 * (12 * 7 - 1) - 1e-6,
            100 * Math.sqrt(2) + 200 * (12 * 7 - 1) + 1e-6);
  }

  private static double length(List<Xy> tour) {
    List<Xy> way = Stream.concat(Stream.of(CORNER), tour.stream()).toList();
    return IntStream.range(1, way.size())
        .mapToDouble(at -> distance(way.get(at - 1), way.get(at)))
        .sum();
  }

  private static List<Xy> nearestNeighbour(List<Xy> holes) {
    List<Xy> left = new ArrayList<>(holes);
    List<Xy> tour = new ArrayList<>();
    Xy from = CORNER;
    while (!left.isEmpty()) {
      Xy last = from;
      from = Collections.min(left, Comparator.comparingDouble(place -> distance(last, place)));
      left.remove(from);
      tour.add(from);
    }
    return tour;
  }

  private static double distance(Xy one, Xy other) {
    double dx = one.x() - other.x();
    double dy = one.y() - other.y();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
