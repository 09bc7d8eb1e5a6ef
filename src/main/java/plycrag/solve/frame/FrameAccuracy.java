package plycrag.solve.frame;

/**
 * What counts as nothing among stiffnesses, forces and motions of one frame. All are parts of what
 * they are held against and so without a unit; no length is among them.
 */
final class FrameAccuracy {
  /**
   * A motion that meets less than this part of what its own freedoms would resist one by one meets
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

  /** A one-way part's force or gap of this part of the greatest is none. */
  static final double NO_FORCE = 1e-9;

  /** Axial forces that change less than this part of the greatest have settled. */
  static final double SETTLED = 1e-10;

  /** A factor of buckling is at most this part of itself from the truth. */
  static final double CRITICAL = 1e-8;

  /** And is held against the sign of pivots at this distance on either side. */
  static final double BESIDE = 1e-6;

  private FrameAccuracy() {}
}
