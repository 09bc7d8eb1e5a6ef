package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * How hard wood and plywood press back on a dowel, f_h,k in N/mm². Diameters in mm, densities in
 * kg/m³, angles to the grain in degrees.
 */
public final class Embedment {
  private Embedment() {}

  /** Bolts and dowels in softwood, EN 1995-1-1, 8.5.1.1, (8.31), (8.32), (8.33). */
  public static Worked bolt(double diameter, double density, double angle) {
    double along = 0.82 * (1 - diameter / 100) * density / 10;
    double k90 = 1.35 + 0.15 * diameter / 10;
    double sine = Trig.sin(angle);
    double cosine = Trig.cos(angle);
    return base(
            "8.5.1.1, (8.31), (8.32), (8.33)",
            "f_h,0/(k_90 sin²α + cos²α), f_h,0 = 0.082 (1 − 0.01 d) ρ_k, k_90 = 1.35 + 0.015 d",
            diameter,
            density)
        .with("α", angle, "°")
        .stress("f_h,0", along)
        .with("k_90", k90)
        .is(along / (k90 * sine * sine + cosine * cosine), "N/mm²");
  }

  /** Bolts in plywood, 8.5.1.1, (8.36). */
  public static Worked boltInPlywood(double diameter, double density) {
    return base("8.5.1.1, (8.36)", "0.11 (1 − 0.01 d) ρ_k", diameter, density)
        .is(0.11 * (1 - diameter / 100) * density, "N/mm²");
  }

  /** Nails, and screws that count as such, not predrilled, 8.3.1.1, (8.15). */
  public static Worked nail(double diameter, double density) {
    return base("8.3.1.1, (8.15)", "0.082 ρ_k d^−0.3", diameter, density)
        .is(0.82 * density / 10 * Trig.power(diameter, -0.3), "N/mm²");
  }

  /** The same, predrilled, (8.16). */
  public static Worked nailPredrilled(double diameter, double density) {
    return base("8.3.1.1, (8.16)", "0.082 (1 − 0.01 d) ρ_k", diameter, density)
        .is(0.82 * (1 - diameter / 100) * density / 10, "N/mm²");
  }

  /** Nails and such screws through plywood, 8.3.1.3, (8.20). */
  public static Worked nailInPlywood(double diameter, double density) {
    return base("8.3.1.3, (8.20)", "0.11 ρ_k d^−0.3", diameter, density)
        .is(0.11 * density * Trig.power(diameter, -0.3), "N/mm²");
  }

  private static Worked.Draft base(String place, String formula, double diameter, double density) {
    return Worked.of(place, formula).length("d", diameter).with("ρ_k", density, "kg/m³");
  }
}
