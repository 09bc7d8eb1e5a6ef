package plycrag.solve.setout;

import plycrag.geometry.Tolerance;

/**
 * Lengths in steps of the marking grid.
 *
 * @param step mm
 */
record Steps(double step) {
  /** Far below every place, and far enough from the end of the range to be added to. */
  static final int NEVER = Integer.MIN_VALUE / 4;

  /** The least step not below a length. */
  int up(double length) {
    return bounded(Math.ceil((length - Tolerance.RECKONING) / step));
  }

  /** The greatest step not above a length. */
  int down(double length) {
    return bounded(Math.floor((length + Tolerance.RECKONING) / step));
  }

  /** The nearest step, of two the lower. */
  int nearest(double length) {
    return bounded(Math.ceil((length - Tolerance.RECKONING) / step - 0.5));
  }

  /** In mm. */
  double length(int steps) {
    return steps * step;
  }

  private static int bounded(double steps) {
    return (int) Math.max(NEVER, Math.min(-NEVER, steps));
  }
}
