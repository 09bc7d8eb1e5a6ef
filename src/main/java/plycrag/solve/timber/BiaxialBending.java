package plycrag.solve.timber;

import java.util.List;

/**
 * Bending about both axes, EN 1995-1-1, 6.1.6: σ_m,y/f_m,y + k_m σ_m,z/f_m,z ≤ 1 (6.11) and with
 * k_m at the other (6.12). Stresses and strengths in N/mm².
 */
public final class BiaxialBending {
  private BiaxialBending() {}

  /** Both utilisations. */
  public static List<Worked> of(SectionStress stress, DesignStrength strength) {
    return StressSum.both(List.of("(6.11)", "(6.12)"), "", Worked.of("", ""), 0, stress, strength);
  }
}
