package plycrag.solve.setout;

import java.util.Arrays;
import java.util.Objects;

/**
 * One amount for all lines within the tolerance: the one that keeps the most, then the least, then
 * the lower. At a given amount the lowest lines that keep their distance are as many as any.
 *
 * <p>Cost: lines times amounts, at worst.
 */
final class Shift {
  private final SteppedTask ground;

  Shift(SteppedTask ground) {
    this.ground = ground;
  }

  /** The lines' places in steps, null for those that are dropped. */
  Integer[] best(int tolerance) {
    Integer[] best = at(0);
    for (int amount = 1; amount <= tolerance && kept(best) < best.length; amount++) {
      best = better(better(best, at(-amount)), at(amount));
    }
    return best;
  }

  private static Integer[] better(Integer[] best, Integer[] other) {
    return kept(other) > kept(best) ? other : best;
  }

  private static long kept(Integer... places) {
    return Arrays.stream(places).filter(Objects::nonNull).count();
  }

  private Integer[] at(int amount) {
    Integer[] places = new Integer[ground.wanted.length];
    int from = Steps.NEVER;
    for (int line = 0; line < places.length; line++) {
      int place = ground.wanted[line] + amount;
      if (place >= from && ground.isFreeAtFirst(place)) {
        places[line] = place;
        from = place + ground.apart;
      }
    }
    return places;
  }
}
