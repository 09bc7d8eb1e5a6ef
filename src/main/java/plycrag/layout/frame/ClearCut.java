package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import plycrag.geometry.Tolerance;

/**
 * How two bodies that reach into each other are cut clear: a little off an end of one or of both,
 * cut as it was, if that leaves no edge further from timber than a sheet is thick; else slanting
 * through its depth, so that it goes on against the sheets as far as it can.
 */
final class ClearCut {
  /**
   * Nobody takes a longer end off a member for a corner; a rule tells of the overlap, mm (a
   * choice).
   */
  private static final int MOST = 60;

  /** No end is slanted by more through its depth, mm (a choice). */
  private static final int SLANT = 120;

  private final double thickness;

  /**
   * @param thickness of the sheets, mm
   */
  ClearCut(double thickness) {
    this.thickness = thickness;
  }

  /** Two bodies of different facets. */
  record Pair(StandingBody one, StandingBody other) {
    boolean isClear() {
      return !one.solid().overlapsByMoreThan(Tolerance.TOUCH, other.solid());
    }

    double lost() {
      return Math.max(one.lost(), other.lost());
    }
  }

  /** A pair of which one or both have lost so much more at the back, mm; none where they cannot. */
  private interface Way extends IntFunction<Optional<Pair>> {}

  /** The same clear of each other; nothing if they are, or cannot be. */
  Optional<Pair> cleared(Pair pair) {
    if (pair.isClear() || pair.one().solid().overlapsByMoreThan(MOST, pair.other().solid())) {
      return Optional.empty();
    }
    for (int by = 1; by <= thickness; by++) {
      Optional<Pair> square = square(pair, by);
      if (square.isPresent()) {
        return square;
      }
    }
    for (int near = 0; near <= MOST; near++) {
      Optional<Pair> slanting = slanting(pair, near);
      if (slanting.isPresent()) {
        return slanting;
      }
    }
    return Optional.empty();
  }

  private Optional<Pair> square(Pair pair, double by) {
    return ways(pair, EndLoss.square(by).toList(), EndLoss.square(by).toList()).stream()
        .flatMap(way -> way.apply(0).stream())
        .filter(one -> one.isClear() && one.lost() <= thickness)
        .findFirst();
  }

  /** Losing so much against the sheets, and as little as can be behind. */
  private Optional<Pair> slanting(Pair pair, double near) {
    Optional<Pair> best = Optional.empty();
    int most = SLANT;
    for (Way way : ways(pair, losses(pair.one(), near), losses(pair.other(), near))) {
      if (isClear(way, most)) {
        int least = least(way, most);
        best = way.apply(least);
        most = least - 1;
      }
    }
    return best;
  }

  private static boolean isClear(Way way, int behind) {
    return behind >= 0 && way.apply(behind).filter(Pair::isClear).isPresent();
  }

  /** The least that clears, if so much does, mm. */
  private static int least(Way way, int most) {
    int low = -1;
    int high = most;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (isClear(way, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private static List<EndLoss> losses(StandingBody body, double near) {
    return body.member().stream().flatMap(member -> EndLoss.upTo(near, member.breadth())).toList();
  }

  /** Off an end of the one, of the other, or of both. */
  private List<Way> ways(Pair pair, List<EndLoss> ofOne, List<EndLoss> ofOther) {
    List<Way> ways = new ArrayList<>();
    for (EndLoss loss : ofOne) {
      ways.add(more -> cut(pair.one(), loss, more).map(one -> new Pair(one, pair.other())));
    }
    for (EndLoss loss : ofOther) {
      ways.add(more -> cut(pair.other(), loss, more).map(other -> new Pair(pair.one(), other)));
    }
    for (EndLoss loss : ofOne) {
      for (EndLoss against : ofOther) {
        ways.add(
            more ->
                cut(pair.one(), loss, more)
                    .flatMap(
                        one ->
                            cut(pair.other(), against, more).map(other -> new Pair(one, other))));
      }
    }
    return ways;
  }

  private Optional<StandingBody> cut(StandingBody body, EndLoss loss, int more) {
    return body.without(loss.slanting(more), thickness);
  }
}
