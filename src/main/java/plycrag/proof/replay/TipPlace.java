package plycrag.proof.replay;

import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Tolerance;

/**
 * A place of the tool's tip, mm from the program's zero. An axis that nothing has moved yet has no
 * number.
 */
record TipPlace(double x, double y, double z) {
  /** Where a program begins. */
  static final TipPlace UNKNOWN = new TipPlace(Double.NaN, Double.NaN, Double.NaN);

  boolean isKnown() {
    return Double.isFinite(x + y + z);
  }

  /** Whether another lies straight above, below or here. An unknown place lies nowhere. */
  boolean isAbove(TipPlace other) {
    return same(x, other.x) && same(y, other.y);
  }

  boolean isAt(TipPlace other) {
    return isAbove(other) && same(z, other.z);
  }

  private static boolean same(double one, double other) {
    return Tolerance.same(one, other) || (Double.isNaN(one) && Double.isNaN(other));
  }

  /** How far it lies beside another. */
  double beside(TipPlace other) {
    return coordinate().distance(other.coordinate());
  }

  boolean hasHeight() {
    return !Double.isNaN(z);
  }

  /** The place under a tool whose length nobody knows. */
  TipPlace atUnknownHeight() {
    return atHeight(Double.NaN);
  }

  TipPlace atHeight(double height) {
    return new TipPlace(x, y, height);
  }

  /** The place on the straight way to another at a height between them. */
  TipPlace towards(TipPlace other, double height) {
    double part = (height - z) / (other.z - z);
    return new TipPlace(x + part * (other.x - x), y + part * (other.y - y), height);
  }

  Coordinate coordinate() {
    return new Coordinate(x, y);
  }
}
