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
public record Volume(double volume, Vector3 centre) {

  /** That of a convex body: the sum of the pyramids from a place inside to all of its surface. */
  public static Volume of(Solid solid) {
    List<Vector3> corners = Stream.concat(solid.near().stream(), solid.far().stream()).toList();
    Vector3 inside =
        times(corners.stream().reduce(new Vector3(0, 0, 0), Vector3::plus), corners.size());
    double volume = 0;
    Vector3 moment = new Vector3(0, 0, 0);
    for (List<Vector3> face : triangles(solid)) {
      Vector3 a = face.get(0).minus(inside);
      Vector3 b = face.get(1).minus(inside);
      Vector3 c = face.get(2).minus(inside);
      double part = Math.abs(a.cross(b).dot(c)) / 6;
      volume += part;
      moment = moment.plus(times(a.plus(b).plus(c), 4 / part));
    }
    return new Volume(volume, volume > 0 ? inside.plus(times(moment, volume)) : inside);
  }

  private static Vector3 times(Vector3 place, double divisor) {
    return new Vector3(place.x() / divisor, place.y() / divisor, place.z() / divisor);
  }

  private static List<List<Vector3>> triangles(Solid solid) {
    List<List<Vector3>> triangles = new ArrayList<>();
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
