package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.List;

/** Fills one bin after another with what is worth most for its weight. */
final class Greedy {
  private final Packing packing;
  private final Incumbent incumbent;
  private final Effort effort;

  Greedy(Packing packing, Incumbent incumbent, Effort effort) {
    this.packing = packing;
    this.incumbent = incumbent;
    this.effort = effort;
  }

  /** Packs the remainder, offers the packing, and returns the patterns that it used. */
  List<CuttingPattern> fill(Remainder rest, long[] values) {
    List<CuttingPattern> used = new ArrayList<>();
    Remainder now = rest;
    while (!now.isEmpty()) {
      int[] sizes = packing.sizes();
      Knapsack knapsack =
          new Knapsack(sizes, values, now.demands(), packing.greatestCapacity(), effort);
      CuttingPattern pattern = choose(now, knapsack, values);
      used.add(pattern);
      now = now.after(packing, pattern, now.room(pattern));
    }
    incumbent.offer(now);
    return used;
  }

  private CuttingPattern choose(Remainder now, Knapsack knapsack, long[] values) {
    long all = new CuttingPattern(0, now.demands()).value(values);
    int chosen = -1;
    boolean last = false;
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      long held = knapsack.value(packing.bins().get(bin).capacity());
      if (now.left()[bin] == 0 || held == 0) {
        continue;
      }
      boolean holdsAll = held == all;
      boolean better =
          chosen < 0
              || (holdsAll && !last)
              || (holdsAll == last && isBetter(bin, chosen, knapsack, last));
      if (better) {
        chosen = bin;
        last = holdsAll;
      }
    }
    return new CuttingPattern(chosen, knapsack.counts(packing.bins().get(chosen).capacity()));
  }

  private boolean isBetter(int bin, int other, Knapsack knapsack, boolean last) {
    Packing.Bin one = packing.bins().get(bin);
    Packing.Bin two = packing.bins().get(other);
    if (last) {
      return one.weight() < two.weight();
    }
    double held = knapsack.value(one.capacity());
    double otherHeld = knapsack.value(two.capacity());
    return held * two.weight() > otherHeld * one.weight();
  }
}
