package plycrag.solve.fixing;

import java.util.List;
import plycrag.geometry.Vector3;

/**
 * A flat side of a length of timber.
 *
 * @param corners in order round it
 * @param outward square to it, away from the timber, of length one
 * @param way of the grain, of length one
 */
record TimberFace(List<Vector3> corners, Vector3 outward, Vector3 way) {

  /** Its distance from the origin, along the way outward. */
  double distance() {
    return outward.dot(corners.get(0));
  }

  /** As it lies flat in axes on its plane. */
  FlatFace flat(Vector3 origin, Vector3 along, Vector3 across) {
    return new FlatFace(
        corners.stream().map(corner -> spot(corner.minus(origin), along, across)).toList(),
        spot(way, along, across));
  }

  static FacePlace spot(Vector3 place, Vector3 along, Vector3 across) {
    return new FacePlace(place.dot(along), place.dot(across));
  }
}
