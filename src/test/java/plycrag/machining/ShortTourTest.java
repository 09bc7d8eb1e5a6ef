package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plycrag.document.Xy;
import plycrag.solve.tour.Metric;

/** Tours of a few holes against the shortest there is, found by trying every order. */
class ShortTourTest {
  private static final int SHEETS = 500;

  @Test
  void isTheShortest() {
    Random random = new Random(1);
    assertThat(Stream.generate(() -> ratio(holes(random))).limit(SHEETS))
        .allMatch(ratio -> Math.abs(ratio - 1) < 1e-9);
  }

  private static List<Xy> holes(Random random) {
    Set<Xy> holes = new LinkedHashSet<>();
    int count = 1 + random.nextInt(8);
    for (int at = 0; at < count; at++) {
      holes.add(new Xy(random.nextInt(2441), random.nextInt(1221)));
    }
    return List.copyOf(holes);
  }

  private static double ratio(List<Xy> holes) {
    return length(HoleTour.of(holes, Metric.STRAIGHT)) / shortest(new Xy(0, 0), holes);
  }

  private static double shortest(Xy from, List<Xy> left) {
    double least = left.isEmpty() ? 0 : Double.MAX_VALUE;
    for (Xy next : left) {
      List<Xy> rest = new ArrayList<>(left);
      rest.remove(next);
      least = Math.min(least, distance(from, next) + shortest(next, rest));
    }
    return least;
  }

  private static double length(List<Xy> tour) {
    double length = 0;
    Xy from = new Xy(0, 0);
    for (Xy next : tour) {
      length += distance(from, next);
      from = next;
    }
    return length;
  }

  private static double distance(Xy one, Xy other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
