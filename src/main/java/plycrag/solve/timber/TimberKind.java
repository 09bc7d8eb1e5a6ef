package plycrag.solve.timber;

import plycrag.geometry.Trig;

/** How timber is made of boards, and what hangs on it. */
public enum TimberKind {
  /** Sawn: k_h after (3.1), β_c 0.2. */
  SOLID(150, 0.2, 1.3, 0.2),
  /** Glued laminated: k_h after (3.2), β_c 0.1. */
  GLUED(600, 0.1, 1.1, 0.1);

  private final double depth;
  private final double exponent;
  private final double most;
  private final double straightness;

  TimberKind(double depth, double exponent, double most, double straightness) {
    this.depth = depth;
    this.exponent = exponent;
    this.most = most;
    this.straightness = straightness;
  }

  /** k_h, by which smaller sections bear more of bending and tension; the size in mm. */
  public double depthFactor(double size) {
    return size >= depth ? 1 : Math.min(most, Trig.power(depth / size, exponent));
  }

  /** β_c of (6.29), for straightness. */
  public double straightness() {
    return straightness;
  }
}
