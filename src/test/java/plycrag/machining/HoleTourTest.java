package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import plycrag.document.Xy;

class HoleTourTest {

  @Provide
  Arbitrary<List<Xy>> sheets() {
    return places().list().ofMinSize(1).ofMaxSize(80);
  }

  private static Arbitrary<Xy> places() {
    return Arbitraries.integers()
        .between(0, 24)
        .tuple2()
        .map(pair -> new Xy(pair.get1() * 100, pair.get2() * 50));
  }

  @Property(tries = 300)
  void visitsEveryHoleOnceAndNeverGoesFurtherThanNearestNeighbour(
      @ForAll("sheets") List<Xy> holes) {
    List<Xy> tour = HoleTour.of(holes);
    assertThat(tour).containsExactlyInAnyOrderElementsOf(holes);
    assertThat(HoleTour.length(tour))
        .isLessThanOrEqualTo(HoleTour.length(HoleTour.nearestNeighbour(holes)) + 1e-6);
  }

  /** What 2-opt promises: turning no stretch around would shorten the way. */
  @Property(tries = 100)
  void noReversalShortensIt(@ForAll("sheets") List<Xy> holes) {
    List<Xy> tour = HoleTour.of(holes);
    double length = HoleTour.length(tour);
    for (int low = 0; low < tour.size(); low++) {
      for (int high = low + 2; high <= tour.size(); high++) {
        List<Xy> turned = new ArrayList<>(tour);
        Collections.reverse(turned.subList(low, high));
        assertThat(HoleTour.length(turned)).isGreaterThan(length - 1e-5);
      }
    }
  }
}
