package plycrag.solve.setout;

/**
 * What a set-out keeps to.
 *
 * @param step of the marking grid, mm
 * @param toMember least distance from a line's centre to a member's side, mm: the flange's radius
 *     and its clearance, say
 * @param toLine least distance between the centres of neighbouring lines, mm
 * @param tolerance how far a line may move, mm
 */
public record Limits(double step, double toMember, double toLine, double tolerance) {
  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if the step is not positive or another is negative
   */
  public Limits {
    if (!(step > 0 && toMember >= 0 && toLine >= 0 && tolerance >= 0)) {
      throw new IllegalArgumentException(
          "no limits: " + step + ", " + toMember + ", " + toLine + ", " + tolerance);
    }
  }
}
