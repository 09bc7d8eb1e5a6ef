package plycrag.solve.timber;

import plycrag.geometry.Trig;

/** How many of fasteners in a row along the grain count, EN 1995-1-1. Lengths in mm. */
public final class EffectiveNumber {
  /** k_ef of Table 8.1 at spacings of so many diameters; predrilled from 4 d. */
  private static final double[][] TABLE = {{4, 0.5}, {7, 0.7}, {10, 0.85}, {14, 1}};

  private EffectiveNumber() {}

  /** Bolts and dowels, 8.5.1.1 (4), (8.34): min(n; n^0.9 (a_1/13d)^0.25). */
  public static Worked bolts(int number, double spacing, double diameter) {
    double root = Math.sqrt(Math.sqrt(spacing / (13 * diameter)));
    return Worked.of("8.5.1.1 (4), (8.34)", "min(n; n^0.9 (a_1/(13 d))^0.25)")
        .with("n", number)
        .length("a_1", spacing)
        .length("d", diameter)
        .is(Math.min(number, Trig.power(number, 0.9) * root));
  }

  /**
   * Nails, and screws that count as such, 8.3.1.1 (8), (8.17): n^k_ef, k_ef from Table 8.1 and
   * between its rows in proportion.
   */
  public static Worked nails(int number, double spacing, double diameter, boolean predrilled) {
    double step = spacing / diameter;
    if (step < (predrilled ? TABLE[0][0] : TABLE[1][0])) {
      throw new IllegalArgumentException("nearer than Table 8.1 knows: " + step + " d");
    }
    double exponent = exponent(step);
    return Worked.of("8.3.1.1 (8), (8.17), Table 8.1", "n^k_ef")
        .with("n", number)
        .length("a_1", spacing)
        .length("d", diameter)
        .with("k_ef", exponent)
        .is(Trig.power(number, exponent));
  }

  private static double exponent(double step) {
    for (int i = 1; i < TABLE.length; i++) {
      double[] low = TABLE[i - 1];
      double[] high = TABLE[i];
      if (step < high[0]) {
        return low[1] + (step - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
      }
    }
    return 1;
  }
}
