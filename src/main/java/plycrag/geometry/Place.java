package plycrag.geometry;

/**
 * A place or a direction in three dimensions, mm.
 *
 * @param x along the first axis
 * @param y along the second
 * @param z along the third
 */
public record Place(double x, double y, double z) {

  /** This place moved by another's distances. */
  public Place plus(Place other) {
    return new Place(x + other.x, y + other.y, z + other.z);
  }

  /** From another place to this one. */
  public Place minus(Place other) {
    return new Place(x - other.x, y - other.y, z - other.z);
  }

  /** The direction square to two others; its length is the area between them. */
  public Place cross(Place other) {
    return new Place(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** How far this reaches along another, times the other's length. */
  public double dot(Place other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** The same way, so many times as long. */
  public Place times(double factor) {
    return new Place(x * factor, y * factor, z * factor);
  }

  /** The same way, of length one; undefined where it has no length. */
  public Place unit() {
    return times(1 / length());
  }

  /** How long it is. */
  public double length() {
    return Math.sqrt(dot(this));
  }
}
