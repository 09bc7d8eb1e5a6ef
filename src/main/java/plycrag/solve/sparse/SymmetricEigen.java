package plycrag.solve.sparse;

import java.util.stream.IntStream;

/**
 * The eigenvalues and eigenvectors of a small symmetric matrix by C. Jacobi's rotations: sums,
 * products, quotients and square roots alone, so that they are the same everywhere.
 */
public final class SymmetricEigen {
  private static final int MOST_SWEEPS = 60;

  private final double[][] matrix;
  private final double[][] vectors;

  /** Of a matrix, which it turns into its eigenvalues. */
  public SymmetricEigen(double[][] matrix) {
    this.matrix = matrix;
    int size = matrix.length;
    this.vectors = new double[size][size];
    IntStream.range(0, size).forEach(i -> vectors[i][i] = 1);
    int sweeps = 0;
    while (sweeps < MOST_SWEEPS && sweep() > 0) {
      sweeps++;
    }
  }

  public double value(int number) {
    return matrix[number][number];
  }

  public double[] vector(int number) {
    return IntStream.range(0, matrix.length).mapToDouble(i -> vectors[i][number]).toArray();
  }

  /** Which eigenvalue is the greatest. */
  int greatest() {
    int greatest = 0;
    for (int i = 1; i < matrix.length; i++) {
      greatest = value(i) > value(greatest) ? i : greatest;
    }
    return greatest;
  }

  /** How many rotations were needed. */
  private int sweep() {
    int rotations = 0;
    for (int row = 0; row < matrix.length; row++) {
      for (int column = row + 1; column < matrix.length; column++) {
        if (counts(row, column)) {
          rotate(row, column);
          rotations++;
        }
      }
    }
    return rotations;
  }

  /** Whether an entry still changes the eigenvalues beside it. */
  private boolean counts(int row, int column) {
    double beside = Math.abs(matrix[row][row]) + Math.abs(matrix[column][column]);
    return beside + Math.abs(matrix[row][column]) != beside;
  }

  private void rotate(int one, int other) {
    double half = (matrix[other][other] - matrix[one][one]) / (2 * matrix[one][other]);
    double tangent = Math.copySign(1, half) / (Math.abs(half) + Math.sqrt(half * half + 1));
    double cosine = 1 / Math.sqrt(tangent * tangent + 1);
    double sine = tangent * cosine;
    for (double[] row : matrix) {
      turn(row, one, other, cosine, sine);
    }
    for (double[] row : vectors) {
      turn(row, one, other, cosine, sine);
    }
    for (int k = 0; k < matrix.length; k++) {
      double first = matrix[one][k];
      double second = matrix[other][k];
      matrix[one][k] = cosine * first - sine * second;
      matrix[other][k] = sine * first + cosine * second;
    }
    matrix[one][other] = 0;
    matrix[other][one] = 0;
  }

  private static void turn(double[] row, int one, int other, double cosine, double sine) {
    double first = row[one];
    double second = row[other];
    row[one] = cosine * first - sine * second;
    row[other] = sine * first + cosine * second;
  }
}
