package plycrag.solve.timber;

/**
 * Lateral buckling of a beam on edge, EN 1995-1-1, 6.3.3: σ_m,crit = 0.78 b² E_0,05/(h l_ef)
 * (6.32), λ_rel,m = √(f_m,k/σ_m,crit) (6.30), k_crit (6.34), and σ_m ≤ k_crit f_m (6.33), with
 * compression (σ_m/(k_crit f_m))² + σ_c/(k_c,z f_c) ≤ 1 (6.35). Lengths in mm.
 */
public final class LateralBuckling {
  private static final double STOCKY = 0.75;
  private static final double SLENDER = 1.4;

  private LateralBuckling() {}

  /** k_crit of a softwood rectangle with an effective length. */
  public static Worked factor(
      TimberStrength strength, RectangularSection section, double effectiveLength) {
    double critical =
        0.78
            * section.breadth()
            * section.breadth()
            * strength.fifthElasticity()
            / (section.depth() * effectiveLength);
    double relative = Math.sqrt(strength.bending() / critical);
    return Worked.of("(6.30), (6.32), (6.34)", "k_crit of λ_rel,m = √(f_m,k/σ_m,crit)")
        .length("b", section.breadth())
        .length("h", section.depth())
        .length("l_ef", effectiveLength)
        .stress("E_0,05", strength.fifthElasticity())
        .stress("σ_m,crit", critical)
        .stress("f_m,k", strength.bending())
        .with("λ_rel,m", relative)
        .is(factor(relative));
  }

  private static double factor(double relative) {
    if (relative <= STOCKY) {
      return 1;
    }
    return relative <= SLENDER ? 1.56 - 0.75 * relative : 1 / (relative * relative);
  }

  /** Bending alone, (6.33). */
  public static Worked bending(SectionStress stress, DesignStrength design, Worked factor) {
    return Worked.of("(6.33)", "σ_m/(k_crit f_m)")
        .stress("σ_m", stress.bendingY())
        .with("k_crit", factor.value())
        .stress("f_m", design.bendingY())
        .is(stress.bendingY() / (factor.value() * design.bendingY()));
  }

  /** With compression, (6.35); the column's factor is that about z. */
  public static Worked withCompression(
      SectionStress stress, DesignStrength design, Worked factor, Worked columnZ) {
    double bending = stress.bendingY() / (factor.value() * design.bendingY());
    return Worked.of("(6.35)", "(σ_m/(k_crit f_m))² + σ_c/(k_c,z f_c)")
        .stress("σ_m", stress.bendingY())
        .with("k_crit", factor.value())
        .stress("f_m", design.bendingY())
        .stress("σ_c", stress.axial())
        .with("k_c,z", columnZ.value())
        .stress("f_c", design.compression())
        .is(bending * bending + stress.axial() / (columnZ.value() * design.compression()));
  }
}
