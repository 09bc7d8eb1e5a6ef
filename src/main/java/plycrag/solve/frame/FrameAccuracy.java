package plycrag.solve.frame;

/**
 * What counts as nothing among forces and motions of one frame. All are parts of what they are held
 * against and so without a unit; no length is among them.
 */
final class FrameAccuracy {
  /** A one-way part's force or gap of this part of the greatest is none. */
  static final double NO_FORCE = 1e-9;

  /** Axial forces that change less than this part of the greatest have settled. */
  static final double SETTLED = 1e-10;

  /** A factor of buckling is held against the sign of pivots at this distance on either side. */
  static final double BESIDE = 1e-6;

  private FrameAccuracy() {}
}
