package plycrag.solve.cutting;

import java.util.List;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/**
 * The linear program over the patterns known so far: how often each is used, in fractions, so that
 * every demand is met, no bin is used more often than there are, and the weight is least.
 */
final class Master {
  private final Packing packing;
  private final Remainder rest;
  private final List<CuttingPattern> patterns;
  private final double unit;
  private final int[] demandRows;
  private final int[] limitRows;

  /** Its solution. */
  static final class Solution {
    private final double[] uses;
    private final double[] values;
    private final double[] tolls;

    Solution(double[] uses, double[] values, double[] tolls) {
      this.uses = uses;
      this.values = values;
      this.tolls = tolls;
    }

    /** Of each pattern. */
    double[] uses() {
      return uses;
    }

    /** Of a piece of each size, in parts of the unit. */
    double[] values() {
      return values;
    }

    /** On each kind of bin for being scarce, in parts of the unit. */
    double[] tolls() {
      return tolls;
    }
  }

  Master(Packing packing, Remainder rest, List<CuttingPattern> patterns, double unit) {
    this.packing = packing;
    this.rest = rest;
    this.patterns = patterns;
    this.unit = unit;
    this.demandRows = new int[packing.kinds()];
    this.limitRows = new int[packing.bins().size()];
  }

  /** Solves it; every demand must be met by some pattern. */
  Solution solve(Effort effort) {
    int rows = numberRows();
    LinearSolver.Builder builder = LinearSolver.newBuilder(costs());
    builder.lower(0.0);
    builder.inequalities(coefficients(rows), sides(rows));
    Optimisation.Options options = new Optimisation.Options();
    options.sparse = false;
    options.linear().dual();
    Optimisation.Result result = builder.build(options).solve();
    effort.spend((long) rows * rows * (rows + patterns.size()));
    return solution(result);
  }

  private int numberRows() {
    int rows = 0;
    for (int kind = 0; kind < demandRows.length; kind++) {
      demandRows[kind] = rest.demands()[kind] > 0 ? rows++ : -1;
    }
    for (int bin = 0; bin < limitRows.length; bin++) {
      limitRows[bin] = packing.isUnlimited(bin) ? -1 : rows++;
    }
    return rows;
  }

  private double[] costs() {
    return patterns.stream()
        .mapToDouble(pattern -> packing.bins().get(pattern.bin()).weight() / unit)
        .toArray();
  }

  private R064Store coefficients(int rows) {
    R064Store matrix = R064Store.FACTORY.make(rows, patterns.size());
    for (int column = 0; column < patterns.size(); column++) {
      CuttingPattern pattern = patterns.get(column);
      for (int kind = 0; kind < demandRows.length; kind++) {
        if (demandRows[kind] >= 0) {
          matrix.set(demandRows[kind], column, -pattern.counts()[kind]);
        }
      }
      if (limitRows[pattern.bin()] >= 0) {
        matrix.set(limitRows[pattern.bin()], column, 1);
      }
    }
    return matrix;
  }

  private R064Store sides(int rows) {
    R064Store sides = R064Store.FACTORY.make(rows, 1);
    for (int kind = 0; kind < demandRows.length; kind++) {
      if (demandRows[kind] >= 0) {
        sides.set(demandRows[kind], 0, -rest.demands()[kind]);
      }
    }
    for (int bin = 0; bin < limitRows.length; bin++) {
      if (limitRows[bin] >= 0) {
        sides.set(limitRows[bin], 0, rest.left()[bin]);
      }
    }
    return sides;
  }

  private Solution solution(Optimisation.Result result) {
    double[] multipliers = result.getDualSolution().orElseThrow().get().toRawCopy1D();
    double[] uses = new double[patterns.size()];
    for (int column = 0; column < uses.length; column++) {
      uses[column] = result.doubleValue(column);
    }
    return new Solution(uses, at(demandRows, multipliers), at(limitRows, multipliers));
  }

  private static double[] at(int[] rows, double[] multipliers) {
    double[] found = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      found[i] = rows[i] < 0 ? 0 : Math.max(0, multipliers[rows[i]]);
    }
    return found;
  }
}
