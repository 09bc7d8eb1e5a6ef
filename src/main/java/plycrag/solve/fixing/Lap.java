package plycrag.solve.fixing;

import java.util.Comparator;
import java.util.Optional;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * The face that two lengths of timber share which lie beside each other.
 *
 * <p>Places on it are read along the first one's grain from its lower or left end, and across from
 * its side against the sheets or, where no sheets lie on it, from its lower or left side.
 *
 * @param first through which screws go
 * @param second into which they go
 * @param corner in the room from which both are read
 * @param along the way along, of length one
 * @param across the way across, of length one
 * @param outward from the first one into the second, of length one
 */
record Lap(
    FlatFace first,
    FlatFace second,
    Vector3 corner,
    Vector3 along,
    Vector3 across,
    Vector3 outward) {
  /** Ways that point away from each other more than this face each other. */
  private static final double OPPOSITE = -0.9;

  /** The one where they touch; empty if none of their sides face each other over any area. */
  static Optional<Lap> of(TimberBody first, TimberBody second) {
    return first.sides().stream()
        .flatMap(
            one ->
                second.sides().stream()
                    .filter(other -> one.outward().dot(other.outward()) < OPPOSITE)
                    .map(other -> new Pair(one, other)))
        .sorted(Comparator.comparingDouble(Pair::apart))
        .map(pair -> pair.lap(first))
        .filter(lap -> !lap.shared().isNothing())
        .findFirst();
  }

  /** The one where two faces meet that face each other. */
  static Lap over(TimberBody first, TimberFace one, TimberFace other) {
    return new Pair(one, other).lap(first);
  }

  private record Pair(TimberFace one, TimberFace other) {
    double apart() {
      return Math.abs(one.distance() + other.distance());
    }

    Lap lap(TimberBody first) {
      Vector3 along = upward(first.way());
      Vector3 beside = one.outward().cross(along).unit();
      boolean turned = first.sheeted() ? beside.dot(first.away()) < 0 : !isUpward(beside);
      Vector3 across = turned ? beside.times(-1) : beside;
      Vector3 origin = new Vector3(0, 0, 0);
      FlatFace flat = one.flat(origin, along, across);
      Vector3 corner =
          along
              .times(flat.least(FacePlace::along))
              .plus(across.times(flat.least(FacePlace::across)))
              .plus(one.outward().times(one.distance()));
      return new Lap(
          one.flat(corner, along, across),
          other.flat(corner, along, across),
          corner,
          along,
          across,
          one.outward());
    }
  }

  private static Vector3 upward(Vector3 way) {
    return isUpward(way) ? way : way.times(-1);
  }

  private static boolean isUpward(Vector3 way) {
    if (Math.abs(way.z()) > Tolerance.ALONG_TIMBER) {
      return way.z() > 0;
    }
    return Math.abs(way.x()) > Tolerance.ALONG_TIMBER ? way.x() > 0 : way.y() > 0;
  }

  /** What both cover. */
  FlatFace shared() {
    return second.kept(first, 0, 0);
  }

  boolean isParallel() {
    return sine() < Tolerance.ALONG_TIMBER;
  }

  /** The sine of the angle between the two grains. */
  double sine() {
    return Math.min(1, Math.abs(first.grain().cross(second.grain())));
  }

  /** Its cosine. */
  double cosine() {
    return Math.min(1, Math.abs(first.grain().dot(second.grain())));
  }
}
