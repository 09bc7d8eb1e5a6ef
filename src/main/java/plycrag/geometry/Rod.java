package plycrag.geometry;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A straight round bar, such as the shank of a screw; as a body it is the prism of twelve sides
 * whose corners lie on it, which is thinner by a thirtieth of its diameter at most.
 *
 * @param from the middle of one end
 * @param way to the other, of length one
 * @param length mm
 * @param diameter mm
 */
public record Rod(Vector3 from, Vector3 way, double length, double diameter) {
  private static final int SIDES = 12;

  /** The middle of the other end. */
  public Vector3 end() {
    return from.plus(way.times(length));
  }

  /** The prism. */
  public Solid body() {
    return new Solid(ring(0, diameter), ring(length, diameter));
  }

  /**
   * The corners of a section of it, or of something thicker on the same axis.
   *
   * @param along from its first end, mm
   * @param broad the diameter of what is cut, mm
   */
  public List<Vector3> ring(double along, double broad) {
    Vector3 one = beside().unit();
    Vector3 other = way.cross(one);
    Vector3 middle = from.plus(way.times(along));
    double step = 360.0 / SIDES;
    double radius = broad / 2;
    return IntStream.range(0, SIDES)
        .mapToObj(
            side ->
                middle
                    .plus(one.times(radius * Trig.cos(side * step)))
                    .plus(other.times(radius * Trig.sin(side * step))))
        .toList();
  }

  /** Square to it: to that axis of the room along which it runs least. */
  private Vector3 beside() {
    double x = Math.abs(way.x());
    double y = Math.abs(way.y());
    double z = Math.abs(way.z());
    if (x <= y && x <= z) {
      return way.cross(new Vector3(1, 0, 0));
    }
    return way.cross(y <= z ? new Vector3(0, 1, 0) : new Vector3(0, 0, 1));
  }
}
