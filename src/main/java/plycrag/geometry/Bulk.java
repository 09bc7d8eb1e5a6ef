package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much room a body takes, and its middle.
 *
 * @param volume mm³
 * @param centre its centre of gravity
 */
public record Bulk(double volume, Place centre) {

  /** That of a convex body: the sum of the pyramids from a place inside to all of its surface. */
  public static Bulk of(Solid solid) {
    List<Place> corners = Stream.concat(solid.near().stream(), solid.far().stream()).toList();
    Place inside = times(corners.stream().reduce(new Place(0, 0, 0), Place::plus), corners.size());
    double volume = 0;
    Place moment = new Place(0, 0, 0);
    for (List<Place> face : triangles(solid)) {
      Place a = face.get(0).minus(inside);
      Place b = face.get(1).minus(inside);
      Place c = face.get(2).minus(inside);
      double part = Math.abs(a.cross(b).dot(c)) / 6;
      volume += part;
      moment = moment.plus(times(a.plus(b).plus(c), 4 / part));
    }
    return new Bulk(volume, volume > 0 ? inside.plus(times(moment, volume)) : inside);
  }

  private static Place times(Place place, double divisor) {
    return new Place(place.x() / divisor, place.y() / divisor, place.z() / divisor);
  }

  private static List<List<Place>> triangles(Solid solid) {
    List<List<Place>> triangles = new ArrayList<>();
    int count = solid.near().size();
    for (int at = 0; at < count; at++) {
      int next = (at + 1) % count;
      triangles.add(List.of(solid.near().get(0), solid.near().get(at), solid.near().get(next)));
      triangles.add(List.of(solid.far().get(0), solid.far().get(at), solid.far().get(next)));
      triangles.add(List.of(solid.near().get(at), solid.near().get(next), solid.far().get(next)));
      triangles.add(List.of(solid.near().get(at), solid.far().get(next), solid.far().get(at)));
    }
    triangles.removeIf(
        one -> one.get(1).minus(one.get(0)).cross(one.get(2).minus(one.get(0))).length() == 0);
    return triangles;
  }
}
