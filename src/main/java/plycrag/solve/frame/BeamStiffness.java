package plycrag.solve.frame;

/**
 * The matrices of a straight piece of beam in its own axes, 12 × 12, row by row: three motions and
 * three rotations of its start, then of its end. With shear after S. Timoshenko; tension's after J.
 * Przemieniecki (Theory of Matrix Structural Analysis, 1968, 5 and 15), from the same deflections.
 */
final class BeamStiffness {
  static final int SIZE = 12;

  private static final int[] ACROSS_Y = {1, 5, 7, 11};
  private static final int[] ACROSS_Z = {2, 4, 8, 10};

  private final BeamSection section;
  private final double length;

  BeamStiffness(BeamSection section, double length) {
    this.section = section;
    this.length = length;
  }

  /** How much shear adds to bending across y: 12 E I / (G A L²). */
  double shearY() {
    return shear(section.inertiaZ(), section.shearAreaY());
  }

  /** The same across z. */
  double shearZ() {
    return shear(section.inertiaY(), section.shearAreaZ());
  }

  private double shear(double inertia, double area) {
    return 12 * section.elasticity() * inertia / (section.shearModulus() * area * length * length);
  }

  double axial() {
    return section.elasticity() * section.area() / length;
  }

  double[] elastic() {
    double[] matrix = new double[SIZE * SIZE];
    couple(matrix, 0, axial());
    couple(matrix, 3, section.shearModulus() * section.torsion() / length);
    bend(matrix, ACROSS_Y, 1, section.inertiaZ(), shearY());
    bend(matrix, ACROSS_Z, -1, section.inertiaY(), shearZ());
    return matrix;
  }

  private void bend(double[] matrix, int[] freedoms, int turn, double inertia, double shear) {
    double base = section.elasticity() * inertia / (length * (1 + shear));
    double slope = turn * 6 * base / length;
    plane(
        matrix,
        freedoms,
        new double[] {
          12 * base / (length * length), slope, (4 + shear) * base, (2 - shear) * base
        });
  }

  /** For a tension of 1 N. */
  double[] stress() {
    double[] matrix = new double[SIZE * SIZE];
    tighten(matrix, ACROSS_Y, 1, shearY());
    tighten(matrix, ACROSS_Z, -1, shearZ());
    return matrix;
  }

  private void tighten(double[] matrix, int[] freedoms, int turn, double shear) {
    double part = 1 / ((1 + shear) * (1 + shear));
    double square = shear * shear / 12;
    plane(
        matrix,
        freedoms,
        new double[] {
          part * (6.0 / 5 + 2 * shear + shear * shear) / length,
          part * turn / 10,
          part * length * (2.0 / 15 + shear / 6 + square),
          -part * length * (1.0 / 30 + shear / 6 + square)
        });
  }

  private static void couple(double[] matrix, int freedom, double stiffness) {
    set(matrix, freedom, freedom, stiffness);
    set(matrix, freedom + 6, freedom + 6, stiffness);
    set(matrix, freedom, freedom + 6, -stiffness);
  }

  /** Values: push against push, push against turn, turn against itself, turn against the other. */
  private static void plane(double[] matrix, int[] freedoms, double[] values) {
    int start = freedoms[0];
    int startTurn = freedoms[1];
    int end = freedoms[2];
    int endTurn = freedoms[3];
    set(matrix, start, start, values[0]);
    set(matrix, end, end, values[0]);
    set(matrix, start, end, -values[0]);
    set(matrix, start, startTurn, values[1]);
    set(matrix, start, endTurn, values[1]);
    set(matrix, end, startTurn, -values[1]);
    set(matrix, end, endTurn, -values[1]);
    set(matrix, startTurn, startTurn, values[2]);
    set(matrix, endTurn, endTurn, values[2]);
    set(matrix, startTurn, endTurn, values[3]);
  }

  private static void set(double[] matrix, int row, int column, double value) {
    matrix[SIZE * row + column] = value;
    matrix[SIZE * column + row] = value;
  }
}
