package plycrag.solve.timber;

import java.util.List;

/**
 * Bending with tension, EN 1995-1-1, 6.2.3: σ_t/f_t + σ_m,y/f_m,y + k_m σ_m,z/f_m,z ≤ 1 (6.17),
 * (6.18). Stresses and strengths in N/mm².
 */
public final class BendingWithTension {
  private BendingWithTension() {}

  /** Both utilisations. */
  public static List<Worked> of(SectionStress stress, DesignStrength strength) {
    Worked.Draft axial =
        Worked.of("", "").stress("σ_t", stress.axial()).stress("f_t", strength.tension());
    return StressSum.both(
        List.of("(6.17)", "(6.18)"),
        "σ_t/f_t + ",
        axial,
        stress.axial() / strength.tension(),
        stress,
        strength);
  }
}
