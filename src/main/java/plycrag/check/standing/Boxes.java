package plycrag.check.standing;

import java.util.List;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;
import plycrag.wall.room.Room.Obstacle;

/** Boxes in the room. */
final class Boxes {
  private Boxes() {}

  /** What stands in the room. */
  static Solid of(Obstacle obstacle) {
    double left = obstacle.corner().left();
    double right = left + obstacle.size().width();
    double near = obstacle.corner().out();
    double far = near + obstacle.size().depth();
    return between(
        List.of(
            new Vector3(left, near, 0),
            new Vector3(right, near, 0),
            new Vector3(right, far, 0),
            new Vector3(left, far, 0)),
        obstacle.corner().low(),
        obstacle.corner().low() + obstacle.size().height());
  }

  /** What stands on an area of the floor, from one height to another, mm. */
  static Solid between(List<Vector3> area, double low, double high) {
    return new Solid(
        area.stream().map(corner -> new Vector3(corner.x(), corner.y(), low)).toList(),
        area.stream().map(corner -> new Vector3(corner.x(), corner.y(), high)).toList());
  }
}
