package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * Torsion of a rectangle, EN 1995-1-1, 6.1.8: τ ≤ k_shape f_v (6.14), k_shape = min(1 + 0.05 h/b;
 * 1.3), the smaller of the two printings of (6.15), and τ = T/(α b² h) by Saint-Venant. Moments in
 * N mm.
 */
public final class SectionTorsion {
  /** The terms after this one add up to less than 1e-10 of the whole. */
  private static final int LAST_TERM = 199;

  private SectionTorsion() {}

  /** The utilisation. */
  public static Worked of(RectangularSection section, double moment, DesignStrength strength) {
    double depth = Math.max(section.depth(), section.breadth());
    double breadth = Math.min(section.depth(), section.breadth());
    double alpha = alpha(depth / breadth);
    double stress = Math.abs(moment) / (alpha * breadth * breadth * depth);
    double shape = Math.min(1.3, 1 + depth / breadth / 20);
    return Worked.of("6.1.8, (6.14), (6.15)", "T/(α b² h)/(k_shape f_v)")
        .with("T", Math.abs(moment), "N mm")
        .with("α", alpha)
        .length("b", breadth)
        .length("h", depth)
        .stress("τ", stress)
        .with("k_shape", shape)
        .stress("f_v", strength.shear())
        .is(stress / (shape * strength.shear()));
  }

  /** Of a rectangle whose longer side is so many times the shorter. */
  private static double alpha(double sides) {
    double fifths = 0;
    double squares = 0;
    for (int n = LAST_TERM; n > 0; n -= 2) {
      double odd = n;
      double tangent = Trig.hyperbolicTangent(odd * Math.PI * sides / 2);
      fifths += tangent / (odd * odd * odd * odd * odd);
      squares += Math.sqrt((1 - tangent) * (1 + tangent)) / (odd * odd);
    }
    double square = Math.PI * Math.PI;
    double turn = 1.0 / 3 - 64 * fifths / (square * square * Math.PI * sides);
    return turn / (1 - 8 * squares / square);
  }
}
