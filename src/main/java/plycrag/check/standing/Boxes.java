package plycrag.check.standing;

import java.util.List;
import plycrag.geometry.Place;
import plycrag.geometry.Solid;
import plycrag.params.RoomParameters.Obstacle;

/** Boxes in the room. */
final class Boxes {
  private Boxes() {}

  /** What stands in the room. */
  static Solid of(Obstacle obstacle) {
    double left = obstacle.left();
    double right = left + obstacle.width();
    double near = obstacle.out();
    double far = near + obstacle.depth();
    return between(
        List.of(
            new Place(left, near, 0),
            new Place(right, near, 0),
            new Place(right, far, 0),
            new Place(left, far, 0)),
        obstacle.low(),
        obstacle.low() + obstacle.height());
  }

  /** What stands on an area of the floor, from one height to another, mm. */
  static Solid between(List<Place> area, double low, double high) {
    return new Solid(
        area.stream().map(corner -> new Place(corner.x(), corner.y(), low)).toList(),
        area.stream().map(corner -> new Place(corner.x(), corner.y(), high)).toList());
  }
}
