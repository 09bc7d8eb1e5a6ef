package plycrag.solve.frame;

/** A part that resists one motion: a bar its stretch, a sheet its racking, a spring its give. */
final class Link implements Element {
  private final int[] freedoms;
  private final double[] row;
  private final double stiffness;
  private final double[] stress;

  /**
   * @param freedoms their numbers
   * @param row what its motion takes of each
   * @param stiffness its force for a motion of one
   * @param stress how a tension of 1 N resists, over its freedoms
   */
  Link(int[] freedoms, double[] row, double stiffness, double[] stress) {
    this.freedoms = freedoms;
    this.row = row;
    this.stiffness = stiffness;
    this.stress = stress;
  }

  /** One in which no tension stiffens anything. */
  Link(int[] freedoms, double[] row, double stiffness) {
    this(freedoms, row, stiffness, new double[row.length * row.length]);
  }

  @Override
  public int[] freedoms() {
    return freedoms;
  }

  @Override
  public double[] stiffness() {
    return square(row, stiffness);
  }

  @Override
  public double[] stressStiffness() {
    return stress;
  }

  /** A row times itself times a factor. */
  static double[] square(double[] row, double factor) {
    double[] square = new double[row.length * row.length];
    for (int i = 0; i < row.length; i++) {
      for (int j = 0; j < row.length; j++) {
        square[row.length * i + j] = factor * row[i] * row[j];
      }
    }
    return square;
  }

  /** Its motion. */
  double measure(double[] motions) {
    double sum = 0;
    for (int k = 0; k < row.length; k++) {
      sum += row[k] * motions[freedoms[k]];
    }
    return sum;
  }

  @Override
  public double axial(double[] motions) {
    return stiffness * measure(motions);
  }
}
