package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Looks for the lightest packing until it is proven or the effort is spent. */
final class Search {
  private static final long MOST_BONUS = 4;
  private static final int THEN_COMPLETE = 1;
  private static final List<Integer> DISCREPANCIES = List.of(0, 1, 2, 3, 4, 6, 8, 12, 16, 24, 32);

  private final Packing packing;
  private final Incumbent incumbent = new Incumbent();

  private Search(Packing packing) {
    this.packing = packing;
  }

  /** The best packing found, with the best bound. */
  static Incumbent of(Packing packing, long steps) {
    Search search = new Search(packing);
    search.run(new Effort(steps));
    return search.incumbent;
  }

  private void run(Effort effort) {
    Remainder all = Remainder.all(packing);
    List<CuttingPattern> known = fill(all, effort);
    if (incumbent.isProven()) {
      return;
    }
    Dive dive = new Dive(packing, incumbent, effort);
    ColumnGeneration.Relaxation root = dive.root(known);
    for (int discrepancies : DISCREPANCIES) {
      if (incumbent.isProven() || effort.isExhausted()) {
        return;
      }
      dive.below(all, root, discrepancies);
      if (discrepancies == THEN_COMPLETE) {
        Completion.run(packing, incumbent, effort, root.bound());
      }
    }
  }

  /** Several fillings even if the first cannot be beaten: another may have fewer patterns. */
  private List<CuttingPattern> fill(Remainder all, Effort effort) {
    int[] sizes = packing.sizes();
    long[] values = Arrays.stream(sizes).asLongStream().toArray();
    Knapsack bySize =
        new Knapsack(sizes, values, packing.demands(), packing.greatestCapacity(), effort);
    incumbent.raise(new DualBound(packing, values, bySize, all).of(all));
    Greedy greedy = new Greedy(packing, incumbent, effort);
    List<CuttingPattern> known = new ArrayList<>();
    for (long bonus = 0; bonus <= MOST_BONUS; bonus++) {
      known.addAll(greedy.fill(all, favouringLarge(bonus)));
    }
    return known;
  }

  private long[] favouringLarge(long bonus) {
    long greatest = packing.greatestCapacity();
    long[] values = new long[packing.kinds()];
    for (int kind = 0; kind < values.length; kind++) {
      long size = packing.sizes()[kind];
      values[kind] = size * (64 * greatest + bonus * bonus * size);
    }
    return values;
  }
}
