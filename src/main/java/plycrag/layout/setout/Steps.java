package plycrag.layout.setout;

/**
 * Lengths in steps of the marking grid.
 *
 * @param step mm
 */
record Steps(double step) {
  /** Lengths are sums of a few decimals, mm. */
  private static final double TOLERANCE = 1e-6;

  /** Far below every place, and far enough from the end of the range to be added to. */
  static final int NEVER = Integer.MIN_VALUE / 4;

  /** The least step not below a length. */
  int up(double length) {
    return bounded(Math.ceil((length - TOLERANCE) / step));
  }

  /** The greatest step not above a length. */
  int down(double length) {
    return bounded(Math.floor((length + TOLERANCE) / step));
  }

  /** The nearest step, of two the lower. */
  int nearest(double length) {
    return bounded(Math.ceil((length - TOLERANCE) / step - 0.5));
  }

  /** In mm. */
  double length(int steps) {
    return steps * step;
  }

  private static int bounded(double steps) {
    return (int) Math.max(NEVER, Math.min(-NEVER, steps));
  }
}
