package plycrag.check.structure;

import plycrag.catalog.StrengthClass;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.ElasticTimber;
import plycrag.solve.timber.DesignBasis;
import plycrag.solve.timber.TimberKind;
import plycrag.solve.timber.TimberStrength;

/**
 * The timber's characteristic values, and what they count for in service classes 1 and 2, EN
 * 1995-1-1, Tables 2.3 and 3.1: γ_M 1.3, k_mod 0.9 for climbers (short term) and 0.6 for weight
 * alone (permanent).
 *
 * @param timber its class
 */
record TimberValues(StrengthClass timber) {
  /** Of solid timber, EN 1995-1-1, Table 2.3. */
  static final double GAMMA = 1.3;

  /** Short term, Table 3.1. */
  static final double SHORT = 0.9;

  /** Permanent, Table 3.1. */
  static final double PERMANENT = 0.6;

  /** For cracks, 6.1.7 (2), with the shear strengths of EN 338:2016. */
  static final double CRACK = 0.67;

  TimberStrength strength() {
    return new TimberStrength(
        TimberKind.SOLID,
        timber.bending(),
        timber.tension(),
        timber.compression(),
        timber.across(),
        timber.shear(),
        timber.stiffness().fifth());
  }

  /** How design values come from them under loads that so add up. */
  DesignBasis basis(Combination combination) {
    return new DesignBasis(combination == Combination.PERMANENT ? PERMANENT : SHORT, GAMMA);
  }

  ElasticTimber elastic() {
    return new ElasticTimber(
        timber.stiffness().mean(), timber.stiffness().shear(), timber.meanDensity());
  }

  String source() {
    return timber.name() + ": " + timber.source();
  }
}
