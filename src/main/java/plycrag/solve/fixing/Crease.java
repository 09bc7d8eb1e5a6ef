package plycrag.solve.fixing;

import java.util.List;
import plycrag.geometry.Vector3;

/**
 * The line at which two flat things meet that turn on each other.
 *
 * @param middle of it, in the room
 * @param line along it, of length one
 * @param length of it, mm
 * @param first the way from it on the one thing, of length one
 * @param firstOut off the face of that, of length one
 * @param second the way from it on the other, of length one
 * @param secondOut off the face of that, of length one
 */
public record Crease(
    Vector3 middle,
    Vector3 line,
    double length,
    Vector3 first,
    Vector3 firstOut,
    Vector3 second,
    Vector3 secondOut) {

  /** Where leaves may lie on both, wherever timber is behind. */
  SteelSeat seat(TimberBody one, TimberBody other, double leaf) {
    return new SteelSeat(
        leg(one, first, firstOut, leaf),
        leg(other, second, secondOut, leaf),
        -length / 2,
        length / 2);
  }

  private Leg leg(TimberBody body, Vector3 way, Vector3 outward, double leaf) {
    Vector3 along = line.times(length / 2);
    Vector3 far = way.times(leaf);
    List<Vector3> corners =
        List.of(
            middle.minus(along),
            middle.plus(along),
            middle.plus(along).plus(far),
            middle.minus(along).plus(far));
    return new Leg(body, new TimberFace(corners, outward, line), middle, way, line, 0, List.of());
  }
}
