package plycrag.layout.fixing;

/**
 * A place on a face of timber.
 *
 * @param along one way of the face, mm
 * @param across the other way, mm
 */
public record Spot(double along, double across) {

  Spot minus(Spot other) {
    return new Spot(along - other.along, across - other.across);
  }

  Spot plus(Spot other) {
    return new Spot(along + other.along, across + other.across);
  }

  double dot(Spot other) {
    return along * other.along + across * other.across;
  }

  /** The sine of the angle to another way times both lengths. */
  double cross(Spot other) {
    return along * other.across - across * other.along;
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  /** A part of the way to another. */
  public Spot toward(Spot other, double part) {
    return new Spot(along + part * (other.along - along), across + part * (other.across - across));
  }
}
