package plycrag.solve.sparse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The greatest eigenvalue of a symmetric matrix that is known by what it makes of a vector, and its
 * eigenvector, after C. Lanczos (J. Res. Nat. Bur. Stand. 45(4), 1950), every vector being made
 * square to all before it. The first is scattered, so that no symmetry hides what is sought.
 */
public final class Lanczos {
  private static final int MOST_STEPS = 300;
  private static final int STEPS_BETWEEN = 8;

  /** The golden section's fractions never repeat. */
  private static final double SCATTERING = (Math.sqrt(5) - 1) / 2;

  private final UnaryOperator<double[]> matrix;
  private final List<double[]> vectors = new ArrayList<>();
  private final List<Double> diagonal = new ArrayList<>();
  private final List<Double> beside = new ArrayList<>();
  private double value;
  private double largest;
  private double[] vector;

  public Lanczos(UnaryOperator<double[]> matrix, int size) {
    this.matrix = matrix;
    this.vector = new double[size];
    double[] next = scattered(size);
    double left = scale(next);
    int most = Math.min(size, MOST_STEPS);
    for (int step = 1; step <= most && left > 0; step++) {
      vectors.add(next);
      next = product(next);
      left = scale(next);
      if (step % STEPS_BETWEEN == 0 || step == most || left == 0) {
        if (read(left)) {
          return;
        }
      }
      beside.add(left);
    }
  }

  private static double[] scattered(int size) {
    double[] values = new double[size];
    for (int i = 0; i < size; i++) {
      double step = (i + 1) * SCATTERING;
      values[i] = step - Math.floor(step) - 0.5;
    }
    return values;
  }

  /** What the matrix makes of the last vector, square to all before. */
  private double[] product(double[] of) {
    double[] product = matrix.apply(of);
    diagonal.add(dot(product, of));
    double before = length(product);
    for (int pass = 0; pass < 2; pass++) {
      for (double[] one : vectors) {
        add(product, -dot(product, one), one);
      }
    }
    return length(product) > SparseAccuracy.NO_RESISTANCE * before
        ? product
        : new double[product.length];
  }

  /** Reads value and vector; whether they are settled. */
  private boolean read(double left) {
    int size = vectors.size();
    double[][] small = new double[size][size];
    for (int i = 0; i < size; i++) {
      small[i][i] = diagonal.get(i);
      if (i + 1 < size) {
        small[i][i + 1] = beside.get(i);
        small[i + 1][i] = beside.get(i);
      }
    }
    SymmetricEigen eigen = new SymmetricEigen(small);
    int greatest = eigen.greatest();
    value = eigen.value(greatest);
    largest = 0;
    for (int i = 0; i < size; i++) {
      largest = Math.max(largest, Math.abs(eigen.value(i)));
    }
    double[] parts = eigen.vector(greatest);
    vector = new double[vector.length];
    for (int i = 0; i < size; i++) {
      add(vector, parts[i], vectors.get(i));
    }
    return left * Math.abs(parts[size - 1]) <= SparseAccuracy.CRITICAL * Math.abs(value);
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static double length(double[] one) {
    return Math.sqrt(dot(one, one));
  }

  private static void add(double[] sum, double factor, double[] other) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * other[i];
    }
  }

  /** Makes it of length one; its length before. */
  private static double scale(double[] one) {
    double length = length(one);
    for (int i = 0; i < one.length && length > 0; i++) {
      one[i] /= length;
    }
    return length;
  }

  public double value() {
    return value;
  }

  /** The greatest of all, whatever its sign, so far as it was met. */
  public double largest() {
    return largest;
  }

  public double[] vector() {
    return vector;
  }
}
