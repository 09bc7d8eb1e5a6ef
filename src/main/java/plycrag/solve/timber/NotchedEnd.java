package plycrag.solve.timber;

/**
 * A beam notched at its support, EN 1995-1-1, 6.5.2: τ = 1.5 V/(b_ef h_ef) ≤ k_v f_v (6.60), with
 * k_v = min(1; k_n (1 + 1.1 i^1.5/√h)/(√h (√(α(1−α)) + 0.8 x/h √(1/α − α²)))) (6.62). Lengths in
 * mm.
 */
public final class NotchedEnd {
  private NotchedEnd() {}

  /**
   * k_v.
   *
   * @param depth h, of the beam
   * @param left h_ef, left above the notch
   * @param reach x, from the support's force to the corner of the notch
   * @param slope i, how far the notch runs out for each mm of its depth
   * @param material k_n: 5 for solid timber, 6.5 for glued
   */
  public static Worked factor(
      double depth, double left, double reach, double slope, double material) {
    double part = left / depth;
    double root = Math.sqrt(depth);
    double eased = 1 + 1.1 * slope * Math.sqrt(slope) / root;
    double sharp =
        root
            * (Math.sqrt(part * (1 - part))
                + 0.8 * reach / depth * Math.sqrt(1 / part - part * part));
    return Worked.of(
            "6.5.2, (6.62)",
            "k_v = min(1; k_n (1 + 1.1 i^1.5/√h)/(√h (√(α(1−α)) + 0.8 x/h √(1/α − α²))))")
        .with("k_n", material)
        .with("i", slope)
        .length("h", depth)
        .with("α", part)
        .length("x", reach)
        .is(Math.min(1, material * eased / sharp));
  }

  /** The utilisation of a shear force, N, on an effective breadth. */
  public static Worked of(
      double shear, double breadth, double left, Worked factor, DesignStrength strength) {
    double stress = 1.5 * Math.abs(shear) / (breadth * left);
    return Worked.of("6.5.2, (6.60)", "1.5 V/(b_ef h_ef)/(k_v f_v)")
        .with("V", Math.abs(shear), "N")
        .length("b_ef", breadth)
        .length("h_ef", left)
        .stress("τ", stress)
        .with("k_v", factor.value())
        .stress("f_v", strength.shear())
        .is(stress / (factor.value() * strength.shear()));
  }
}
