package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Finds the cheapest cutting plan; among those the one with least waste, and few patterns. */
public final class CuttingPlanner {
  private final CuttingTask task;
  private final PackingTask packed;

  private CuttingPlanner(CuttingTask task) {
    this.task = task;
    this.packed = PackingTask.of(task);
  }

  /**
   * The plan; none if the sticks do not hold the pieces, as far as the search can tell.
   *
   * @param steps after how many elementary steps, each about a nanosecond, the best plan so far is
   *     taken; one that is proven comes sooner
   * @throws IllegalArgumentException if a piece is longer than every stick
   * @throws ArithmeticException if lengths or prices are too great to be added up
   */
  public static Optional<CuttingPlan> plan(CuttingTask task, long steps) {
    return task.pieces().isEmpty()
        ? Optional.of(new CuttingPlan(List.of(), 0, 0, 0, true))
        : new CuttingPlanner(task).plan(steps);
  }

  private Optional<CuttingPlan> plan(long steps) {
    Incumbent found = Search.of(packed.packing(), steps);
    if (found.best().stream().anyMatch(one -> packed.isLastResort(one.pattern().bin()))) {
      return Optional.empty();
    }
    List<CuttingPlan.Cut> cuts = new ArrayList<>();
    long cost = 0;
    long waste = 0;
    for (Remainder.Filled filled : found.best()) {
      CuttingPlan.Cut cut = cut(filled);
      CuttingTask.Stock stock = task.stocks().get(cut.stock());
      long held = cut.lengths().stream().mapToLong(Long::longValue).sum();
      cuts.add(cut);
      cost += filled.times() * stock.price();
      waste += filled.times() * (stock.length() - held);
    }
    long bound = found.isProven() ? cost : packed.costBound(found.bound());
    return Optional.of(new CuttingPlan(cuts, cost, bound, waste, found.isProven()));
  }

  private CuttingPlan.Cut cut(Remainder.Filled filled) {
    List<Long> lengths = new ArrayList<>();
    int[] counts = filled.pattern().counts();
    for (int kind = 0; kind < counts.length; kind++) {
      lengths.addAll(Collections.nCopies(counts[kind], packed.lengths().get(kind)));
    }
    return new CuttingPlan.Cut(packed.stock(filled.pattern().bin()), lengths, filled.times());
  }
}
