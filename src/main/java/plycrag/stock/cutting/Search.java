package plycrag.stock.cutting;

import java.util.ArrayList;
import java.util.List;

/** Looks for the lightest packing until it is proven or the effort is spent. */
final class Search {
  private static final long STEPS = 6_000_000_000L;
  private static final List<Integer> DISCREPANCIES = List.of(0, 1, 2, 4, 8);

  private final Packing packing;
  private final Incumbent incumbent = new Incumbent();

  private Search(Packing packing) {
    this.packing = packing;
  }

  /** The best packing found, with the best bound. */
  static Incumbent of(Packing packing) {
    Search search = new Search(packing);
    search.run();
    return search.incumbent;
  }

  private void run() {
    Effort effort = new Effort(STEPS);
    Greedy greedy = new Greedy(packing, incumbent, effort);
    Remainder all = Remainder.all(packing);
    List<Pattern> known = new ArrayList<>();
    long[] sizes = new long[packing.kinds()];
    for (int kind = 0; kind < sizes.length; kind++) {
      sizes[kind] = packing.sizes()[kind];
    }
    Knapsack bySize =
        new Knapsack(packing.sizes(), sizes, packing.demands(), packing.greatestCapacity(), effort);
    incumbent.raise(DualBound.of(packing, all, sizes, bySize));
    for (long bonus = 0; bonus <= 4 && !incumbent.isProven(); bonus++) {
      known.addAll(greedy.fill(all, favouringLarge(bonus)));
    }
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
    }
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
