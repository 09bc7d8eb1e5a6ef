package plycrag.solve.timber;

/**
 * Shear of a rectangle, EN 1995-1-1, 6.1.7: τ = 1.5 V/(k_cr b h) ≤ f_v (6.13), (6.13a). Forces in
 * N.
 */
public final class SectionShear {
  private SectionShear() {}

  /** The utilisation; k_cr for cracks. */
  public static Worked of(
      RectangularSection section, double shear, double crack, DesignStrength strength) {
    double stress = 1.5 * Math.abs(shear) / (crack * section.area());
    return Worked.of("6.1.7, (6.13), (6.13a)", "1.5 V/(k_cr b h)/f_v")
        .with("V", Math.abs(shear), "N")
        .with("k_cr", crack)
        .length("b", section.breadth())
        .length("h", section.depth())
        .stress("τ", stress)
        .stress("f_v", strength.shear())
        .is(stress / strength.shear());
  }
}
