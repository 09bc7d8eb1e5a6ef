package plycrag.solve.fixing;

import java.util.List;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;

/**
 * Axes on a plane in the room.
 *
 * @param origin a place on it
 * @param along one way on it, of length one
 * @param across the other, of length one
 */
record FlatAxes(Vector3 origin, Vector3 along, Vector3 across) {
  /** The same plane seen from the same side, turned by quarters so that the second axis rises. */
  FlatAxes upright() {
    FlatAxes best = this;
    FlatAxes turned = this;
    for (int quarter = 1; quarter < 4; quarter++) {
      turned = new FlatAxes(origin, turned.across, turned.along.times(-1));
      best = Tolerance.isMore(turned.across.z(), best.across.z()) ? turned : best;
    }
    return best;
  }

  FacePlace spot(Vector3 place) {
    return TimberFace.spot(place.minus(origin), along, across);
  }

  Vector3 place(FacePlace spot) {
    return origin.plus(along.times(spot.along())).plus(across.times(spot.across()));
  }

  /** The body over a rectangle. */
  Solid over(FacePlace low, FacePlace high, Vector3 thickness) {
    List<Vector3> on =
        List.of(
            place(low),
            place(new FacePlace(high.along(), low.across())),
            place(high),
            place(new FacePlace(low.along(), high.across())));
    return new Solid(on, on.stream().map(thickness::plus).toList());
  }
}
