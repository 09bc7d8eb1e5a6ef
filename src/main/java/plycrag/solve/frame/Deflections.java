package plycrag.solve.frame;

/**
 * How a place of a piece of beam moves with the piece's ends, bent by shear too (S. Timoshenko).
 * After E. Betti, a force there is to the ends what the ends' motions are to the place.
 */
final class Deflections {
  private final double part;
  private final double length;
  private final double shearY;
  private final double shearZ;

  Deflections(BeamPiece piece, double at) {
    this.length = piece.length();
    this.part = at / length;
    BeamStiffness stiffness = new BeamStiffness(piece.beam().section(), length);
    this.shearY = stiffness.shearY();
    this.shearZ = stiffness.shearZ();
  }

  /** Adds what an action at the place does to the ends. */
  void add(PieceLoad.Action action, double[] ends) {
    share(ends, 0, action.force().x());
    share(ends, 3, action.moment().x());
    bend(ends, new int[] {1, 5, 7, 11}, 1, shearY, action.force().y(), action.moment().z());
    bend(ends, new int[] {2, 4, 8, 10}, -1, shearZ, action.force().z(), action.moment().y());
  }

  private void share(double[] ends, int freedom, double value) {
    ends[freedom] += (1 - part) * value;
    ends[freedom + 6] += part * value;
  }

  private void bend(
      double[] ends, int[] freedoms, int turn, double shear, double force, double moment) {
    double[] moved = moved(shear);
    double[] turned = turned(shear);
    for (int i = 0; i < freedoms.length; i++) {
      int sign = i % 2 == 0 ? 1 : turn;
      ends[freedoms[i]] += sign * (force * moved[i] + turn * moment * turned[i]);
    }
  }

  /** How far the place moves for each motion of an end. */
  private double[] moved(double shear) {
    double p = part;
    double scale = 1 / (1 + shear);
    return new double[] {
      scale * (1 - 3 * p * p + 2 * p * p * p + shear * (1 - p)),
      scale * length * (p - 2 * p * p + p * p * p + shear / 2 * (p - p * p)),
      scale * (3 * p * p - 2 * p * p * p + shear * p),
      scale * length * (p * p * p - p * p - shear / 2 * (p - p * p))
    };
  }

  /** How far it turns. */
  private double[] turned(double shear) {
    double p = part;
    double scale = 1 / (1 + shear);
    double slope = 6 * scale * (p * p - p) / length;
    return new double[] {
      slope,
      scale * (1 - 4 * p + 3 * p * p + shear * (1 - p)),
      -slope,
      scale * (3 * p * p - 2 * p + shear * p)
    };
  }
}
