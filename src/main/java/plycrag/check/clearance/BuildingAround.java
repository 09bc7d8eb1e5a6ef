package plycrag.check.clearance;

import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.wall.room.Room;
import plycrag.wall.room.Room.Obstacle;
import plycrag.wall.room.RoomPlane;

/** What is told of the room around a wall, as what a straight way may meet. */
final class BuildingAround {
  private final Room room;
  private final double width;

  BuildingAround(Layout layout) {
    this.room = layout.wall().room();
    this.width = layout.wall().frontWidth();
  }

  /** What of the room a way meets, in words; nothing that is not told. */
  Optional<String> met(Vector3 from, Vector3 to) {
    return ceiling(to).or(() -> side(to)).or(() -> obstacle(from, to));
  }

  private Optional<String> ceiling(Vector3 to) {
    return isOver(room.ceiling().plane(), to)
        ? Optional.of("the ceiling")
        : Optional.of("the rafters").filter(words -> isOver(room.ceiling().rafters(), to));
  }

  private static boolean isOver(Optional<RoomPlane> plane, Vector3 to) {
    return plane.filter(one -> one.heightOver(to) > 0).isPresent();
  }

  private Optional<String> side(Vector3 to) {
    if (room.sides().left().filter(left -> to.x() < -left).isPresent()
        || room.sides().right().filter(right -> to.x() > width + right).isPresent()) {
      return Optional.of("a wall of the room");
    }
    return room.sides().front().filter(front -> to.y() > front).map(front -> "a wall of the room");
  }

  private Optional<String> obstacle(Vector3 from, Vector3 to) {
    return room.obstacles().stream()
        .filter(one -> isIn(one, from) || isIn(one, to) || isIn(one, from.plus(to).times(0.5)))
        .map(Obstacle::name)
        .findFirst();
  }

  private static boolean isIn(Obstacle box, Vector3 place) {
    Obstacle.Corner corner = box.corner();
    Obstacle.Size size = box.size();
    return isBetween(place.x(), corner.left(), size.width())
        && isBetween(place.y(), corner.out(), size.depth())
        && isBetween(place.z(), corner.low(), size.height());
  }

  private static boolean isBetween(double place, double from, double size) {
    return from < place && place < from + size;
  }
}
