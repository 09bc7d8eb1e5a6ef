package plycrag.check.structure;

import plycrag.solve.timber.SectionTorsion;
import plycrag.solve.timber.Worked;

/**
 * Torsion of what is held or loaded beside its middle, EN 1995-1-1, 6.1.8: T/(α b² h) ≤ k_shape f_v
 * (6.14), (6.15). N mm, mm, N/mm².
 */
final class TorsionCheck implements MemberCheck {
  @Override
  public String words() {
    return "torsion";
  }

  @Override
  public double utilisation(Actions actions, MemberResistance resistance) {
    return Math.abs(actions.torsion()) * resistance.torsionOfOne();
  }

  @Override
  public Worked worked(Actions actions, MemberResistance resistance) {
    return SectionTorsion.of(resistance.section(), actions.torsion(), resistance.design());
  }
}
