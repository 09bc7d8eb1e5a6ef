package plycrag.solve.setout;

/**
 * A stretch of the axis where no line's centre may lie; its ends are free. A setback is a keep-out
 * from or to infinity.
 *
 * @param name what keeps the line out
 * @param low its lower end, mm
 * @param high its upper end, mm
 */
public record ForbiddenStretch(String name, double low, double high) {
  /**
   * Checks the ends.
   *
   * @throws IllegalArgumentException if the upper end is below the lower one
   */
  public ForbiddenStretch {
    if (!(low <= high)) {
      throw new IllegalArgumentException(name + ": no stretch from " + low + " to " + high);
    }
  }
}
