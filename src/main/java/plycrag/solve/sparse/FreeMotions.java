package plycrag.solve.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The motions that a frame does not resist. Where a pivot vanishes, its freedom moves by one and
 * those before it adjust; the matrix being nowhere negative, such motions are all that it does not
 * resist.
 */
public final class FreeMotions {
  private final SparsePattern pattern;
  private final double[] entries;
  private final double[] diagonal;

  public FreeMotions(SparsePattern pattern, double[] entries) {
    this.pattern = pattern;
    this.entries = entries;
    this.diagonal = pattern.diagonal(entries);
  }

  /** All, by freedom, independent of each other; none where a factor is sound. */
  public List<double[]> all(Optional<Factor> factor) {
    if (factor.isPresent() && sound(factor.get())) {
      return List.of();
    }
    double part = SparseAccuracy.RAISED;
    Optional<Factor> raised = Factor.of(pattern, raised(part));
    while (raised.isEmpty() && part < SparseAccuracy.MOST_RAISED) {
      part *= 10;
      raised = Factor.of(pattern, raised(part));
    }
    double added = part;
    return raised
        .map(one -> read(one, added, factor.isEmpty()))
        .orElseThrow(() -> new IllegalStateException("a stiffness that is not positive"));
  }

  private boolean sound(Factor factor) {
    double[] pivots = factor.pivots();
    for (int i = 0; i < pivots.length; i++) {
      if (pivots[i] < SparseAccuracy.SUSPICIOUS * diagonal[i]) {
        return false;
      }
    }
    return true;
  }

  /** With something where there is nothing at all. */
  private double[] raised(double part) {
    double[] raised = pattern.raised(entries, part);
    pattern.fillDiagonal(raised, part);
    return raised;
  }

  /**
   * Reads them from the pivots.
   *
   * @param some whether there must be one; then every pivot is looked at, since one whose own
   *     unknown hardly moves may be far from nothing
   */
  private List<double[]> read(Factor factor, double part, boolean some) {
    double[] pivots = factor.pivots();
    boolean[] free = new boolean[pivots.length];
    List<double[]> motions = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double[] softest = new double[pivots.length];
    for (int seat = 0; seat < pivots.length; seat++) {
      if (some
          || pivots[seat] < SparseAccuracy.SUSPICIOUS * diagonal[seat]
          || diagonal[seat] == 0) {
        double[] motion = factor.adjusted(seat, free);
        double resisted = pivots[seat] / energy(motion);
        free[seat] = diagonal[seat] == 0 || resisted < SparseAccuracy.NO_RESISTANCE + 2 * part;
        if (free[seat]) {
          motions.add(pattern.seating().risen(motion));
        } else if (resisted < least) {
          least = resisted;
          softest = pattern.seating().risen(motion);
        }
      }
    }
    return motions.isEmpty() && some ? List.of(softest) : motions;
  }

  /** What its freedoms would take one by one. */
  private double energy(double[] motion) {
    double sum = 0;
    for (int i = 0; i < motion.length; i++) {
      sum += diagonal[i] * motion[i] * motion[i];
    }
    return sum;
  }
}
