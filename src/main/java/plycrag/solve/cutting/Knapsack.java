package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The bounded knapsack by dynamic programming, for every capacity at once. Demands are split into
 * bundles of 1, 2, 4, … pieces; one bit for each bundle and capacity remembers what was taken.
 */
final class Knapsack {
  private final int[] sizes;
  private final long[] best;
  private final List<Bundle> bundles = new ArrayList<>();

  private static final class Bundle {
    private final int kind;
    private final int times;
    private final long[] taken;

    Bundle(int kind, int times, long[] taken) {
      this.kind = kind;
      this.times = times;
      this.taken = taken;
    }

    int kind() {
      return kind;
    }

    int times() {
      return times;
    }

    long[] taken() {
      return taken;
    }
  }

  /**
   * Solves it.
   *
   * @param sizes of one piece of each kind
   * @param values of one piece of each kind; kinds without value are left out
   * @param demands the most of each kind
   * @param capacity the greatest that will be asked for
   */
  Knapsack(int[] sizes, long[] values, int[] demands, int capacity, Effort effort) {
    this.sizes = sizes;
    this.best = new long[capacity + 1];
    for (int kind = 0; kind < sizes.length; kind++) {
      int most = values[kind] > 0 ? Math.min(demands[kind], capacity / sizes[kind]) : 0;
      for (int times = 1; most > 0; times *= 2) {
        int taken = Math.min(times, most);
        add(kind, taken, values[kind]);
        most -= taken;
      }
    }
    effort.spend((long) bundles.size() * capacity);
  }

  private void add(int kind, int times, long value) {
    int size = sizes[kind] * times;
    long gain = value * times;
    long[] taken = new long[best.length / 64 + 1];
    for (int capacity = best.length - 1; capacity >= size; capacity--) {
      long with = best[capacity - size] + gain;
      if (with > best[capacity]) {
        best[capacity] = with;
        taken[capacity >> 6] |= 1L << (capacity & 63);
      }
    }
    bundles.add(new Bundle(kind, times, taken));
  }

  /** The greatest value that a capacity holds. */
  long value(int capacity) {
    return best[capacity];
  }

  /** The counts that make it. */
  int[] counts(int capacity) {
    int[] counts = new int[sizes.length];
    int room = capacity;
    for (int i = bundles.size() - 1; i >= 0; i--) {
      Bundle bundle = bundles.get(i);
      if ((bundle.taken()[room >> 6] >>> (room & 63) & 1) != 0) {
        counts[bundle.kind()] += bundle.times();
        room -= sizes[bundle.kind()] * bundle.times();
      }
    }
    return counts;
  }
}
