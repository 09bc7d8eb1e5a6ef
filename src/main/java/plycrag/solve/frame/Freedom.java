package plycrag.solve.frame;

/** One of the six ways in which a place can move; of forces, the force or moment that belongs. */
public enum Freedom {
  /** Along the first axis, mm or N. */
  ALONG_X,
  /** Along the second axis, mm or N. */
  ALONG_Y,
  /** Along the third axis, mm or N. */
  ALONG_Z,
  /** About the first axis, radians or N mm. */
  ABOUT_X,
  /** About the second axis, radians or N mm. */
  ABOUT_Y,
  /** About the third axis, radians or N mm. */
  ABOUT_Z;

  /** Whether it is a rotation. */
  public boolean turns() {
    return ordinal() >= ABOUT_X.ordinal();
  }
}
