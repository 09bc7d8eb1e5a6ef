package plycrag.solve.frame;

import plycrag.geometry.Vector3;

/** How an end of a piece of beam follows the freedoms of the frame. */
final class PieceEnd {
  private final int[] freedoms;
  private final double[][] rows;

  private PieceEnd(int[] freedoms, double[][] rows) {
    this.freedoms = freedoms;
    this.rows = rows;
  }

  /** The numbers of those that it follows. */
  int[] freedoms() {
    return freedoms;
  }

  /** What each of the end's six own freedoms takes of them. */
  double[][] rows() {
    return rows;
  }

  /** At a node, on an arm; what is released has a freedom of its own instead. */
  static PieceEnd at(BeamEnd end, int node, LocalAxes axes, FreedomCount count) {
    int released = end.released().size();
    int hinges = released == 0 ? 0 : count.block(released);
    int[] freedoms = new int[FreedomCount.OF_NODE + released];
    double[][] rows = new double[FreedomCount.OF_NODE][freedoms.length];
    int next = FreedomCount.OF_NODE;
    for (Freedom freedom : Freedom.values()) {
      int row = freedom.number();
      freedoms[row] = FreedomCount.OF_NODE * node + row;
      if (end.releases(freedom)) {
        rows[row][next] = 1;
        freedoms[next] = hinges + next - FreedomCount.OF_NODE;
        next++;
      } else {
        follow(rows[row], freedom, end.at().arm(), axes);
      }
    }
    return new PieceEnd(freedoms, rows);
  }

  private static void follow(double[] row, Freedom freedom, Vector3 arm, LocalAxes axes) {
    Vector3 axis = axes.axis(freedom.number() % 3);
    if (freedom.turns()) {
      put(row, 3, axis);
    } else {
      put(row, 0, axis);
      put(row, 3, arm.cross(axis));
    }
  }

  static void put(double[] row, int at, Vector3 values) {
    row[at] = values.x();
    row[at + 1] = values.y();
    row[at + 2] = values.z();
  }

  /** Inside a beam, with six freedoms in the beam's own axes. */
  static PieceEnd inside(FreedomCount count) {
    int first = count.block(FreedomCount.OF_NODE);
    int[] freedoms = new int[FreedomCount.OF_NODE];
    double[][] rows = new double[FreedomCount.OF_NODE][FreedomCount.OF_NODE];
    for (int i = 0; i < freedoms.length; i++) {
      freedoms[i] = first + i;
      rows[i][i] = 1;
    }
    return new PieceEnd(freedoms, rows);
  }
}
