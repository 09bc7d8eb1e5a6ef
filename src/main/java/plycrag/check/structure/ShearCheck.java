package plycrag.check.structure;

import plycrag.solve.timber.SectionShear;
import plycrag.solve.timber.Worked;

/**
 * Shear, EN 1995-1-1, 6.1.7: 1.5 V/(k_cr b h) ≤ f_v (6.13), (6.13a), V being the force along both
 * sides together. N, mm, N/mm².
 */
final class ShearCheck implements MemberCheck {
  @Override
  public String words() {
    return "shear";
  }

  @Override
  public double utilisation(Actions actions, MemberResistance resistance) {
    return 1.5
        * actions.shear()
        / (TimberValues.CRACK * resistance.section().area())
        / resistance.design().shear();
  }

  @Override
  public Worked worked(Actions actions, MemberResistance resistance) {
    return SectionShear.of(
        resistance.section(), actions.shear(), TimberValues.CRACK, resistance.design());
  }
}
