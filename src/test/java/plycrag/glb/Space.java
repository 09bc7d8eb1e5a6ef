package plycrag.glb;

/** A place or a way in right-handed axes, m. */
public record Space(double x, double y, double z) {
  /** Moved by another. */
  public Space plus(Space other) {
    return new Space(x + other.x, y + other.y, z + other.z);
  }

  /** From another to this. */
  public Space minus(Space other) {
    return new Space(x - other.x, y - other.y, z - other.z);
  }

  Space mirrored() {
    return new Space(-x, y, z);
  }

  /** So many times as long. */
  public Space times(double factor) {
    return new Space(x * factor, y * factor, z * factor);
  }

  /** Along another. */
  public double dot(Space other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Square to both, by the right hand. */
  public Space cross(Space other) {
    return new Space(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Its length. */
  public double length() {
    return Math.sqrt(dot(this));
  }
}
