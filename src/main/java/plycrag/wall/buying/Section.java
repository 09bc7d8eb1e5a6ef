package plycrag.wall.buying;

import plycrag.geometry.Tolerance;

/**
 * A section of timber.
 *
 * @param breadth the side against the sheet, mm
 * @param depth the other side, mm
 */
public record Section(double breadth, double depth) {

  /** The smaller side, mm. */
  public double smaller() {
    return Math.min(breadth, depth);
  }

  /** The greater side, mm. */
  public double greater() {
    return Math.max(breadth, depth);
  }

  /** What of a length of it is cut across, mm². */
  public double area() {
    return breadth * depth;
  }

  /** Whether what measures another section can be cut from it, turned as may be. */
  public boolean holds(Section other) {
    return other.smaller() <= smaller() + Tolerance.TOUCH
        && other.greater() <= greater() + Tolerance.TOUCH;
  }

  /** Whether both are the same timber, whichever side is told first. */
  public boolean isLike(Section other) {
    return holds(other) && other.holds(this);
  }
}
