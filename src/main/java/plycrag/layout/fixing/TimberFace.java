package plycrag.layout.fixing;

import java.util.List;
import plycrag.geometry.Place;

/**
 * A flat side of a length of timber.
 *
 * @param corners in order round it
 * @param outward square to it, away from the timber, of length one
 * @param way of the grain, of length one
 */
record TimberFace(List<Place> corners, Place outward, Place way) {

  /** Its distance from the origin, along the way outward. */
  double distance() {
    return outward.dot(corners.get(0));
  }

  /** As it lies flat in axes on its plane. */
  FlatFace flat(Place origin, Place along, Place across) {
    return new FlatFace(
        corners.stream().map(corner -> spot(corner.minus(origin), along, across)).toList(),
        spot(way, along, across));
  }

  static Spot spot(Place place, Place along, Place across) {
    return new Spot(place.dot(along), place.dot(across));
  }
}
