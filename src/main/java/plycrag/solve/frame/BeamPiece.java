package plycrag.solve.frame;

import java.util.stream.IntStream;

/** A stretch of a beam between two places that have freedoms. */
final class BeamPiece implements Element {
  private final Beam beam;
  private final LocalAxes axes;
  private final double from;
  private final double length;
  private final int[] freedoms;
  private final double[][] rows;
  private final double[] elastic;
  private final double[] stress;
  private final double axial;

  /** From a place along a beam, so long, mm. */
  BeamPiece(Beam beam, double from, double length, PieceEnd start, PieceEnd end) {
    this.beam = beam;
    this.axes = beam.axes();
    this.from = from;
    this.length = length;
    this.freedoms =
        IntStream.concat(IntStream.of(start.freedoms()), IntStream.of(end.freedoms())).toArray();
    this.rows = rows(start, end);
    BeamStiffness stiffness = new BeamStiffness(beam.section(), length);
    this.elastic = stiffness.elastic();
    this.stress = stiffness.stress();
    this.axial = stiffness.axial();
  }

  private static double[][] rows(PieceEnd start, PieceEnd end) {
    int first = start.freedoms().length;
    double[][] rows = new double[BeamStiffness.SIZE][first + end.freedoms().length];
    for (int i = 0; i < FreedomCount.OF_NODE; i++) {
      System.arraycopy(start.rows()[i], 0, rows[i], 0, first);
      System.arraycopy(
          end.rows()[i], 0, rows[FreedomCount.OF_NODE + i], first, end.freedoms().length);
    }
    return rows;
  }

  Beam beam() {
    return beam;
  }

  LocalAxes axes() {
    return axes;
  }

  double from() {
    return from;
  }

  double length() {
    return length;
  }

  @Override
  public int[] freedoms() {
    return freedoms;
  }

  @Override
  public double[] stiffness() {
    return spread(elastic);
  }

  @Override
  public double[] stressStiffness() {
    return spread(stress);
  }

  /** A matrix of the piece's own axes over the freedoms of the frame. */
  private double[] spread(double[] own) {
    int size = freedoms.length;
    double[] spread = new double[size * size];
    for (int i = 0; i < BeamStiffness.SIZE; i++) {
      double[] through = combined(own, i);
      for (int row = 0; row < size; row++) {
        addTimes(spread, size * row, through, rows[i][row]);
      }
    }
    return spread;
  }

  private double[] combined(double[] own, int row) {
    double[] sum = new double[freedoms.length];
    for (int j = 0; j < BeamStiffness.SIZE; j++) {
      addTimes(sum, 0, rows[j], own[BeamStiffness.SIZE * row + j]);
    }
    return sum;
  }

  private static void addTimes(double[] sum, int at, double[] values, double factor) {
    if (factor != 0) {
      for (int k = 0; k < values.length; k++) {
        sum[at + k] += factor * values[k];
      }
    }
  }

  /** How its ends move in its own axes: twelve, mm and radians. */
  double[] ownMotions(double[] motions) {
    double[] own = new double[BeamStiffness.SIZE];
    for (int i = 0; i < own.length; i++) {
      for (int k = 0; k < freedoms.length; k++) {
        own[i] += rows[i][k] * motions[freedoms[k]];
      }
    }
    return own;
  }

  /** Adds what acts on its ends in its own axes to what acts on freedoms. */
  void addOwnForces(double[] own, double[] forces) {
    for (int i = 0; i < own.length; i++) {
      for (int k = 0; k < freedoms.length; k++) {
        forces[freedoms[k]] += rows[i][k] * own[i];
      }
    }
  }

  /** What holds its ends as they move, under a tension, in its own axes. */
  double[] ownForces(double[] ownMotions, double tension) {
    double[] forces = new double[BeamStiffness.SIZE];
    for (int i = 0; i < forces.length; i++) {
      for (int j = 0; j < forces.length; j++) {
        int at = BeamStiffness.SIZE * i + j;
        forces[i] += (elastic[at] + tension * stress[at]) * ownMotions[j];
      }
    }
    return forces;
  }

  @Override
  public double axial(double[] motions) {
    double stretch = 0;
    for (int k = 0; k < freedoms.length; k++) {
      stretch += (rows[FreedomCount.OF_NODE][k] - rows[0][k]) * motions[freedoms[k]];
    }
    return axial * stretch;
  }
}
