package plycrag.geometry;

import org.locationtech.jts.geom.Coordinate;

/**
 * A circle to be walked along.
 *
 * @param x of its centre, mm
 * @param y of its centre, mm
 * @param radius mm, greater than 0
 */
public record Round(double x, double y, double radius) {
  private static final int FEWEST_SIDES = 8;

  /** The place at an angle in degrees, counter-clockwise from the right. */
  public Coordinate at(double degrees) {
    return new Coordinate(x + radius * Trig.cos(degrees), y + radius * Trig.sin(degrees));
  }

  /**
   * Into how many straight ways of one length it must be parted, an even number, so that none
   * strays from it by more than an error in mm.
   */
  public int sides(double error) {
    double half = StrictMath.acos(1 - Math.min(error / radius, 1));
    int sides = (int) Math.ceil(StrictMath.PI / half);
    return Math.max(FEWEST_SIDES, sides + sides % 2);
  }

  /** The length of the shorter arc between two places on it so far apart, mm. */
  public double arc(double chord) {
    return 2 * radius * StrictMath.asin(Math.min(1, chord / 2 / radius));
  }

  /** Its length, mm. */
  public double length() {
    return 2 * StrictMath.PI * radius;
  }
}
