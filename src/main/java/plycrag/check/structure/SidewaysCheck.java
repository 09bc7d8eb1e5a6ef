package plycrag.check.structure;

import plycrag.solve.timber.LateralBuckling;
import plycrag.solve.timber.SectionStress;
import plycrag.solve.timber.Worked;

/**
 * Lateral buckling of what is bent on edge, EN 1995-1-1, 6.3.3: σ_m/(k_crit f_m) ≤ 1 (6.33), with
 * compression (σ_m/(k_crit f_m))² + σ_c/(k_c,z f_c) ≤ 1 (6.35). N/mm².
 */
final class SidewaysCheck implements MemberCheck {
  @Override
  public String words() {
    return "lateral buckling";
  }

  @Override
  public double utilisation(Actions actions, MemberResistance resistance) {
    double bending = resistance.bendingY(actions) / resistance.lateral().value();
    return actions.normal() < 0
        ? bending * bending + resistance.compression(actions) / resistance.columnZ().value()
        : bending;
  }

  @Override
  public Worked worked(Actions actions, MemberResistance resistance) {
    SectionStress stress =
        SectionStress.of(resistance.section(), actions.normal(), actions.momentY(), 0);
    return actions.normal() < 0
        ? LateralBuckling.withCompression(
            stress, resistance.design(), resistance.lateral(), resistance.columnZ())
        : LateralBuckling.bending(stress, resistance.design(), resistance.lateral());
  }
}
