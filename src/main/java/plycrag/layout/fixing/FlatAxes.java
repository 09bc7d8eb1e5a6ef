package plycrag.layout.fixing;

import java.util.List;
import plycrag.geometry.Place;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;

/**
 * Axes on a plane in the room.
 *
 * @param origin a place on it
 * @param along one way on it, of length one
 * @param across the other, of length one
 */
record FlatAxes(Place origin, Place along, Place across) {
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

  Spot spot(Place place) {
    return TimberFace.spot(place.minus(origin), along, across);
  }

  Place place(Spot spot) {
    return origin.plus(along.times(spot.along())).plus(across.times(spot.across()));
  }

  /** The body over a rectangle. */
  Solid over(Spot low, Spot high, Place thickness) {
    List<Place> on =
        List.of(
            place(low),
            place(new Spot(high.along(), low.across())),
            place(high),
            place(new Spot(low.along(), high.across())));
    return new Solid(on, on.stream().map(thickness::plus).toList());
  }
}
