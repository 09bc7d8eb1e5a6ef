package plycrag.check.structure;

import plycrag.solve.timber.BendingWithCompression;
import plycrag.solve.timber.BendingWithTension;
import plycrag.solve.timber.SectionStress;
import plycrag.solve.timber.Worked;

/**
 * Bending about both axes with tension or compression where nothing buckles, EN 1995-1-1, 6.2.3 and
 * 6.2.4: σ_t/f_t + σ_m,y/f_m,y + k_m σ_m,z/f_m,z ≤ 1 (6.17), (6.18), or (σ_c/f_c)² in place of the
 * first (6.19), (6.20); k_m = 0.7 at the lesser. N/mm².
 */
final class BendingCheck implements MemberCheck {
  private static final double LESSER = 0.7;

  @Override
  public String words() {
    return "bending";
  }

  @Override
  public double utilisation(Actions actions, MemberResistance resistance) {
    double compression = resistance.compression(actions);
    return resistance.tension(actions) + compression * compression + bent(actions, resistance);
  }

  private static double bent(Actions actions, MemberResistance resistance) {
    double y = resistance.bendingY(actions);
    double z = resistance.bendingZ(actions);
    return Math.max(y + LESSER * z, LESSER * y + z);
  }

  @Override
  public Worked worked(Actions actions, MemberResistance resistance) {
    SectionStress stress =
        SectionStress.of(
            resistance.section(), actions.normal(), actions.momentY(), actions.momentZ());
    return Worked.greatest(
        actions.normal() > 0
            ? BendingWithTension.of(stress, resistance.design())
            : BendingWithCompression.of(stress, resistance.design()));
  }
}
