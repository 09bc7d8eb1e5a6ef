package plycrag.wall.room;

import plycrag.geometry.FloorAxes;
import plycrag.geometry.Vector3;

/**
 * What ends the room above or below: a plane that may fall in any direction.
 *
 * @param height over the left end of the foot of the first wall's face, mm
 * @param right how much higher it is for each millimetre to the right
 * @param out how much higher it is for each millimetre toward the climber
 */
public record RoomPlane(double height, double right, double out) {
  /** Its height at a place of the room, mm. */
  public double at(double x, double y) {
    return height + x * right + y * out;
  }

  /** The same in the axes of a run. */
  public RoomPlane in(FloorAxes axes) {
    Vector3 origin = axes.toRoom(new Vector3(0, 0, 0));
    Vector3 across = axes.toRoom(new Vector3(1, 0, 0)).minus(origin);
    Vector3 forward = axes.toRoom(new Vector3(0, 1, 0)).minus(origin);
    return new RoomPlane(at(origin.x(), origin.y()), along(across), along(forward));
  }

  private double along(Vector3 way) {
    return way.x() * right + way.y() * out;
  }

  /** How far a place lies above it, mm; below zero it lies below. */
  public double heightOver(Vector3 place) {
    return place.z() - at(place.x(), place.y());
  }

  /** How much it rises on the way from one place to another, mm. */
  public double rise(Vector3 from, Vector3 to) {
    return at(to.x(), to.y()) - at(from.x(), from.y());
  }

  /** Whether it is as high everywhere. */
  public boolean isLevel() {
    return right == 0 && out == 0;
  }

  /** The same so much higher, mm. */
  public RoomPlane raised(double by) {
    return new RoomPlane(height + by, right, out);
  }
}
