package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Gilmore and Gomory's column generation (1961): the linear program's values price new patterns by
 * a knapsack, which come into the program until none would lower its weight.
 */
final class ColumnGeneration {
  private static final double SCALE = 1L << 40;
  private static final int ROUNDS = 400;

  private final Packing packing;
  private final Incumbent incumbent;
  private final Effort effort;
  private final Greedy greedy;
  private final double unit;

  /** A relaxed packing. */
  static final class Relaxation {
    private final List<CuttingPattern> patterns;
    private final double[] uses;
    private final DualBound bound;

    Relaxation(List<CuttingPattern> patterns, double[] uses, DualBound bound) {
      this.patterns = List.copyOf(patterns);
      this.uses = uses;
      this.bound = bound;
    }

    /** Those in the program. */
    List<CuttingPattern> patterns() {
      return patterns;
    }

    /** Of each, in fractions. */
    double[] uses() {
      return uses;
    }

    /** No packing of the remainder, or of what is left of it, is lighter. */
    DualBound bound() {
      return bound;
    }
  }

  ColumnGeneration(Packing packing, Incumbent incumbent, Effort effort) {
    this.packing = packing;
    this.incumbent = incumbent;
    this.effort = effort;
    this.greedy = new Greedy(packing, incumbent, effort);
    this.unit = packing.unit();
  }

  /** Relaxes a remainder; ends early once it cannot beat the best packing known. */
  Relaxation relax(Remainder rest, List<CuttingPattern> known) {
    Set<CuttingPattern> patterns = start(rest, known);
    DualBound best = null;
    for (int round = 0; ; round++) {
      List<CuttingPattern> columns = new ArrayList<>(patterns);
      Master.Solution solution = new Master(packing, rest, columns, unit).solve(effort);
      long[] values = scaled(solution.values());
      Knapsack knapsack =
          new Knapsack(packing.sizes(), values, rest.demands(), packing.greatestCapacity(), effort);
      DualBound dual = new DualBound(packing, values, knapsack, rest);
      if (best == null || dual.slack(rest, 0) < best.slack(rest, 0)) {
        best = dual;
      }
      patterns.addAll(improving(rest, solution, values, knapsack));
      boolean isDone = patterns.size() == columns.size() || round >= ROUNDS;
      if (isDone || rest.spent() + best.of(rest) >= incumbent.weight() || effort.isExhausted()) {
        return new Relaxation(columns, solution.uses(), best);
      }
      if (patterns.size() > 2 * packing.kinds() + 100) {
        patterns.removeAll(worst(columns, solution, values));
      }
    }
  }

  private Set<CuttingPattern> start(Remainder rest, List<CuttingPattern> known) {
    Set<CuttingPattern> patterns = new LinkedHashSet<>();
    for (int kind = 0; kind < packing.kinds(); kind++) {
      if (rest.demands()[kind] > 0) {
        patterns.add(alone(rest, kind));
      }
    }
    known.stream().filter(pattern -> rest.room(pattern) > 0).forEach(patterns::add);
    return patterns;
  }

  /** As many of one size as a bin holds, the bin that is lightest for each. */
  private CuttingPattern alone(Remainder rest, int kind) {
    CuttingPattern best = null;
    double least = Double.MAX_VALUE;
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      Packing.Bin one = packing.bins().get(bin);
      int holds = Math.min(one.capacity() / packing.sizes()[kind], rest.demands()[kind]);
      double each = (double) one.weight() / holds;
      if (packing.isUnlimited(bin) && holds > 0 && each < least) {
        least = each;
        int[] counts = new int[packing.kinds()];
        counts[kind] = holds;
        best = new CuttingPattern(bin, counts);
      }
    }
    return best;
  }

  private static long[] scaled(double[] values) {
    long[] scaled = new long[values.length];
    for (int kind = 0; kind < values.length; kind++) {
      scaled[kind] = (long) (values[kind] * SCALE);
    }
    return scaled;
  }

  private List<CuttingPattern> improving(
      Remainder rest, Master.Solution solution, long[] values, Knapsack knapsack) {
    List<CuttingPattern> found = new ArrayList<>();
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      int capacity = packing.bins().get(bin).capacity();
      if (rest.left()[bin] > 0 && isGain(knapsack.value(capacity), bin, solution)) {
        found.add(new CuttingPattern(bin, knapsack.counts(capacity)));
      }
    }
    if (!found.isEmpty()) {
      greedy.fill(rest, positive(values)).stream()
          .filter(pattern -> isGain(pattern.value(values), pattern.bin(), solution))
          .forEach(found::add);
    }
    return found;
  }

  private boolean isGain(long value, int bin, Master.Solution solution) {
    double cost = packing.bins().get(bin).weight() / unit + solution.tolls()[bin];
    return value / SCALE > cost + Rounding.WEIGHT;
  }

  /** Pieces without value would never be packed. */
  private long[] positive(long[] values) {
    long[] positive = new long[values.length];
    for (int kind = 0; kind < values.length; kind++) {
      positive[kind] = Math.max(values[kind], packing.sizes()[kind]);
    }
    return positive;
  }

  private Set<CuttingPattern> worst(
      List<CuttingPattern> columns, Master.Solution solution, long[] values) {
    List<Integer> idle =
        IntStream.range(packing.kinds(), columns.size())
            .filter(column -> solution.uses()[column] <= Rounding.WEIGHT)
            .boxed()
            .sorted(Comparator.comparingDouble(column -> -cost(columns.get(column), values)))
            .toList();
    Set<CuttingPattern> worst = new LinkedHashSet<>();
    idle.subList(0, idle.size() / 2).forEach(column -> worst.add(columns.get(column)));
    return worst;
  }

  private double cost(CuttingPattern pattern, long[] values) {
    return packing.bins().get(pattern.bin()).weight() / unit - pattern.value(values) / SCALE;
  }
}
