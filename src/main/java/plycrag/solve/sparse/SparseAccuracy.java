package plycrag.solve.sparse;

/**
 * What counts as nothing among the entries of one matrix. All are parts of what they are held
 * against and so without a unit; no length is among them.
 */
final class SparseAccuracy {
  /**
   * A motion that meets less than this part of what its own unknowns would resist one by one meets
   * nothing. Doubles leave 1e-16 to 1e-14 of a true mechanism; a beam cut into eight hundred pieces
   * still resists by 2e-12.
   */
  static final double NO_RESISTANCE = 1e-12;

  /** A pivot that lost more of its diagonal than this is looked at closely. */
  static final double SUSPICIOUS = 1e-9;

  /**
   * By what part diagonals are raised so that a singular matrix has a factor from which its motions
   * can be read; ten times as much where that was too little.
   */
  static final double RAISED = 1e-14;

  /** More is never added than this. */
  static final double MOST_RAISED = 1e-9;

  /** An eigenvalue is at most this part of itself from the truth. */
  static final double CRITICAL = 1e-8;

  private SparseAccuracy() {}
}
