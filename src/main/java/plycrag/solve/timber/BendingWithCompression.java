package plycrag.solve.timber;

import java.util.List;

/**
 * Bending with compression where nothing buckles, EN 1995-1-1, 6.2.4: (σ_c/f_c)² + σ_m,y/f_m,y +
 * k_m σ_m,z/f_m,z ≤ 1 (6.19), (6.20). Stresses and strengths in N/mm².
 */
public final class BendingWithCompression {
  private BendingWithCompression() {}

  /** Both utilisations. */
  public static List<Worked> of(SectionStress stress, DesignStrength strength) {
    double part = stress.axial() / strength.compression();
    Worked.Draft axial =
        Worked.of("", "").stress("σ_c", stress.axial()).stress("f_c", strength.compression());
    return StressSum.both(
        List.of("(6.19)", "(6.20)"), "(σ_c/f_c)² + ", axial, part * part, stress, strength);
  }
}
