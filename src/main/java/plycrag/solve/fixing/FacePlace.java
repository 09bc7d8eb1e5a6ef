package plycrag.solve.fixing;

/**
 * A place on a face of timber.
 *
 * @param along one way of the face, mm
 * @param across the other way, mm
 */
public record FacePlace(double along, double across) {

  FacePlace minus(FacePlace other) {
    return new FacePlace(along - other.along, across - other.across);
  }

  FacePlace plus(FacePlace other) {
    return new FacePlace(along + other.along, across + other.across);
  }

  double dot(FacePlace other) {
    return along * other.along + across * other.across;
  }

  /** The sine of the angle to another way times both lengths. */
  double cross(FacePlace other) {
    return along * other.across - across * other.along;
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  /** A part of the way to another. */
  public FacePlace toward(FacePlace other, double part) {
    return new FacePlace(
        along + part * (other.along - along), across + part * (other.across - across));
  }
}
