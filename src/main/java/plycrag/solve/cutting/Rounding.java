package plycrag.solve.cutting;

/**
 * What the linear programs' doubles may be out by; plans themselves are in whole numbers, so that
 * none of these decides whether a plan is right. They follow the solver's own accuracy and belong
 * to no length.
 */
final class Rounding {
  /** A pattern that gains less, in weights of the heaviest bin, gains nothing. */
  static final double WEIGHT = 1e-7;

  /** A use of a pattern so near to a whole number is one. */
  static final double USE = 1e-6;

  /** By how much of itself a product is raised, so that a bound is never too low. */
  static final double PRODUCT = 1e-9;

  private Rounding() {}
}
