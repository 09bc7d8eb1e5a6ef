package plycrag.solve.scatter;

/**
 * The distance that centres keep from each other, as it changes up the area: the same below and
 * above the stretch, linear within.
 */
public final class Fade {
  private final double low;
  private final double atLow;
  private final double high;
  private final double atHigh;

  /**
   * Checks the ranges.
   *
   * @param low where the change begins, mm up the area
   * @param atLow the distance there, mm
   * @param high where it ends, mm up the area
   * @param atHigh the distance there, mm
   * @throws IllegalArgumentException if a distance is not positive or the stretch has no extent
   */
  public Fade(double low, double atLow, double high, double atHigh) {
    if (!(low < high && atLow > 0 && atHigh > 0)) {
      throw new IllegalArgumentException(
          "no distance from " + atLow + " at " + low + " to " + atHigh + " at " + high);
    }
    this.low = low;
    this.atLow = atLow;
    this.high = high;
    this.atHigh = atHigh;
  }

  /** The distance that a centre keeps at a height, mm. */
  public double at(double height) {
    double part = Math.max(0, Math.min(1, (height - low) / (high - low)));
    return atLow + (atHigh - atLow) * part;
  }

  /** The least distance anywhere, mm. */
  double least() {
    return Math.min(atLow, atHigh);
  }

  /** The greatest distance anywhere, mm. */
  double greatest() {
    return Math.max(atLow, atHigh);
  }
}
