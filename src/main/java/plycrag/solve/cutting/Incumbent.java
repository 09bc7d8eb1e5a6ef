package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The best packing known, and the best bound. */
final class Incumbent {
  private List<Remainder.Filled> best = List.of();
  private long weight = Long.MAX_VALUE;
  private long bound;

  /** Takes a complete packing if it is lighter, or as light with fewer patterns. */
  void offer(Remainder complete) {
    if (complete.spent() > weight) {
      return;
    }
    List<Remainder.Filled> merged = merged(complete.filled());
    if (complete.spent() < weight || merged.size() < best.size()) {
      weight = complete.spent();
      best = merged;
    }
  }

  private static List<Remainder.Filled> merged(List<Remainder.Filled> filled) {
    Map<CuttingPattern, Integer> times = new LinkedHashMap<>();
    filled.forEach(one -> times.merge(one.pattern(), one.times(), Integer::sum));
    List<Remainder.Filled> merged = new ArrayList<>();
    times.forEach((pattern, count) -> merged.add(new Remainder.Filled(pattern, count)));
    return merged;
  }

  /** No packing is lighter than this. */
  void raise(long proven) {
    bound = Math.max(bound, proven);
  }

  List<Remainder.Filled> best() {
    return best;
  }

  long weight() {
    return weight;
  }

  long bound() {
    return bound;
  }

  boolean isProven() {
    return bound >= weight;
  }
}
