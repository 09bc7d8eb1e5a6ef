package plycrag.geometry;

/**
 * A place or a direction in three dimensions, mm.
 *
 * @param x along the first axis
 * @param y along the second
 * @param z along the third
 */
public record Vector3(double x, double y, double z) {

  /** This place moved by another's distances. */
  public Vector3 plus(Vector3 other) {
    return new Vector3(x + other.x, y + other.y, z + other.z);
  }

  /** From another place to this one. */
  public Vector3 minus(Vector3 other) {
    return new Vector3(x - other.x, y - other.y, z - other.z);
  }

  /** The direction square to two others; its length is the area between them. */
  public Vector3 cross(Vector3 other) {
    return new Vector3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** How far this reaches along another, times the other's length. */
  public double dot(Vector3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** The same way, so many times as long. */
  public Vector3 times(double factor) {
    return new Vector3(x * factor, y * factor, z * factor);
  }

  /** The same way, of length one; undefined where it has no length. */
  public Vector3 unit() {
    return times(1 / length());
  }

  /** How long it is. */
  public double length() {
    return Math.sqrt(dot(this));
  }
}
