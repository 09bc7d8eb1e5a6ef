package plycrag.machining.replay;

import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Tolerance;

/**
 * A place of the tool's tip, mm from the program's zero. An axis that nothing has moved yet has no
 * number.
 */
record Spot(double x, double y, double z) {
  /** Where a program begins. */
  static final Spot UNKNOWN = new Spot(Double.NaN, Double.NaN, Double.NaN);

  boolean isKnown() {
    return Double.isFinite(x + y + z);
  }

  /** Whether another lies straight above, below or here. An unknown place lies nowhere. */
  boolean isAbove(Spot other) {
    return same(x, other.x) && same(y, other.y);
  }

  boolean isAt(Spot other) {
    return isAbove(other) && same(z, other.z);
  }

  private static boolean same(double one, double other) {
    return Tolerance.same(one, other) || (Double.isNaN(one) && Double.isNaN(other));
  }

  /** How far it lies beside another. */
  double beside(Spot other) {
    return coordinate().distance(other.coordinate());
  }

  boolean hasHeight() {
    return !Double.isNaN(z);
  }

  /** The place under a tool whose length nobody knows. */
  Spot atUnknownHeight() {
    return atHeight(Double.NaN);
  }

  Spot atHeight(double height) {
    return new Spot(x, y, height);
  }

  /** The place on the straight way to another at a height between them. */
  Spot towards(Spot other, double height) {
    double part = (height - z) / (other.z - z);
    return new Spot(x + part * (other.x - x), y + part * (other.y - y), height);
  }

  Coordinate coordinate() {
    return new Coordinate(x, y);
  }
}
