package plycrag.solve.timber;

/**
 * Splitting by a force across the grain, EN 1995-1-1, 8.1.4, (8.4): F_90,Rk = 14 b w √(h_e/(1 −
 * h_e/h)) in N, lengths in mm; of both sides the greater shear must not be above. w is 1 but for
 * punched plates.
 */
public final class GrainSplitting {
  private GrainSplitting() {}

  /** Of a member's breadth and depth and of how far the farthest fastener is from the edge. */
  public static Worked of(double breadth, double depth, double farthest) {
    return Worked.of("8.1.4, (8.4)", "14 b √(h_e/(1 − h_e/h))")
        .length("b", breadth)
        .length("h", depth)
        .length("h_e", farthest)
        .is(14 * breadth * Math.sqrt(farthest / (1 - farthest / depth)), "N");
  }
}
