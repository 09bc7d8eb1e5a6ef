package plycrag.solve.frame;

import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * Three directions of length one, square to each other.
 *
 * @param x along a member
 * @param y to its side
 * @param z x × y
 */
record LocalAxes(Vector3 x, Vector3 y, Vector3 z) {
  /** Along one direction, with y on the side of another, which must not be parallel. */
  static LocalAxes of(Vector3 along, Vector3 reference) {
    Vector3 x = along.unit();
    Vector3 across = x.cross(reference);
    if (!(across.length() > Tolerance.PARALLEL * reference.length())) {
      throw new IllegalArgumentException("the reference lies along the member: " + reference);
    }
    Vector3 z = across.unit();
    return new LocalAxes(x, z.cross(x), z);
  }

  Vector3 axis(int number) {
    return switch (number) {
      case 0 -> x;
      case 1 -> y;
      default -> z;
    };
  }

  /** A direction of the frame's axes in these. */
  Vector3 inward(Vector3 one) {
    return new Vector3(x.dot(one), y.dot(one), z.dot(one));
  }

  /** A direction of these axes in the frame's. */
  Vector3 outward(Vector3 one) {
    return x.times(one.x()).plus(y.times(one.y())).plus(z.times(one.z()));
  }
}
