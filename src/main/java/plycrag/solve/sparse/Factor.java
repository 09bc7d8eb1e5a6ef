package plycrag.solve.sparse;

import java.util.Optional;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/** Half of a positive definite matrix: what it is of itself and its transpose, after Cholesky. */
public final class Factor {
  private final Seating seating;
  private final DMatrixSparseCSC lower;

  private Factor(Seating seating, DMatrixSparseCSC lower) {
    this.seating = seating;
    this.lower = lower;
  }

  /** Of a matrix of such entries; empty where some motion meets no resistance, or less. */
  public static Optional<Factor> of(SparsePattern pattern, double[] entries) {
    CholeskyUpLooking_DSCC cholesky = new CholeskyUpLooking_DSCC();
    return cholesky.decompose(pattern.matrix(entries))
        ? Optional.of(new Factor(pattern.seating(), cholesky.getL()))
        : Optional.empty();
  }

  /** What is left of each diagonal when those before it give way, by seat. */
  double[] pivots() {
    double[] pivots = new double[lower.numCols];
    for (int i = 0; i < pivots.length; i++) {
      double root = lower.nz_values[lower.col_idx[i]];
      pivots[i] = root * root;
    }
    return pivots;
  }

  /** Motions under forces, both by freedom. */
  public double[] solve(double[] forces) {
    double[] motions = seating.seated(forces);
    TriangularSolver_DSCC.solveL(lower, motions);
    TriangularSolver_DSCC.solveTranL(lower, motions);
    return seating.risen(motions);
  }

  /** Half of solving: from forces by freedom to what is by seat. */
  public double[] half(double[] forces) {
    double[] half = seating.seated(forces);
    TriangularSolver_DSCC.solveL(lower, half);
    return half;
  }

  /** The other half: to motions by freedom. */
  public double[] otherHalf(double[] half) {
    double[] motions = half.clone();
    TriangularSolver_DSCC.solveTranL(lower, motions);
    return seating.risen(motions);
  }

  /**
   * The motion of one in one seat to which those before it adjust freely, by seat; those that are
   * left out and those after it rest.
   */
  double[] adjusted(int seat, boolean[] leftOut) {
    double[] motion = new double[lower.numCols];
    motion[seat] = 1;
    for (int column = seat - 1; column >= 0; column--) {
      if (!leftOut[column]) {
        motion[column] = -along(column, motion) / lower.nz_values[lower.col_idx[column]];
      }
    }
    return motion;
  }

  private double along(int column, double[] motion) {
    double sum = 0;
    for (int i = lower.col_idx[column] + 1; i < lower.col_idx[column + 1]; i++) {
      sum += lower.nz_values[i] * motion[lower.nz_rows[i]];
    }
    return sum;
  }
}
