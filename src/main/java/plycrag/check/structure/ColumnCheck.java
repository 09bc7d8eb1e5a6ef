package plycrag.check.structure;

import plycrag.solve.timber.SectionStress;
import plycrag.solve.timber.Worked;

/**
 * Compression with buckling and bending, EN 1995-1-1, 6.3.2: σ_c/(k_c,y f_c) + σ_m,y/f_m,y + k_m
 * σ_m,z/f_m,z ≤ 1 (6.23), and about z with k_m at the other (6.24). N/mm². Without compression
 * there is none.
 */
final class ColumnCheck implements MemberCheck {
  private static final double LESSER = 0.7;

  @Override
  public String words() {
    return "compression with buckling";
  }

  @Override
  public double utilisation(Actions actions, MemberResistance resistance) {
    if (actions.normal() >= 0) {
      return 0;
    }
    double compression = resistance.compression(actions);
    double y = resistance.bendingY(actions);
    double z = resistance.bendingZ(actions);
    return Math.max(
        compression / resistance.columnY().value() + y + LESSER * z,
        compression / resistance.columnZ().value() + LESSER * y + z);
  }

  @Override
  public Worked worked(Actions actions, MemberResistance resistance) {
    SectionStress stress =
        SectionStress.of(
            resistance.section(),
            Math.min(0, actions.normal()),
            actions.momentY(),
            actions.momentZ());
    return Worked.greatest(
        resistance
            .column()
            .utilisations(stress, resistance.design(), resistance.columnY(), resistance.columnZ()));
  }
}
