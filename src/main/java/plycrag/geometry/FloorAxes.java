package plycrag.geometry;

/**
 * Where a run of facets above each other stands on the floor, seen from above: its own axes, x to
 * the right along the wall and y toward the climber, in those of the room.
 *
 * @param x of its origin in the room, mm
 * @param y likewise
 * @param heading how far its x is turned from the room's, counter-clockwise, degrees
 */
public record FloorAxes(double x, double y, double heading) {
  /** Where the first run stands: its axes are the room's. */
  public static final FloorAxes FIRST = new FloorAxes(0, 0, 0);

  /** A place of the run in the room. */
  public Vector3 toRoom(Vector3 inRun) {
    if (equals(FIRST)) {
      return inRun;
    }
    double cos = Trig.cos(heading);
    double sin = Trig.sin(heading);
    return new Vector3(
        x + inRun.x() * cos - inRun.y() * sin, y + inRun.x() * sin + inRun.y() * cos, inRun.z());
  }

  /** A place of the room in the run. */
  public Vector3 fromRoom(Vector3 inRoom) {
    if (equals(FIRST)) {
      return inRoom;
    }
    double cos = Trig.cos(heading);
    double sin = Trig.sin(heading);
    double right = inRoom.x() - x;
    double out = inRoom.y() - y;
    return new Vector3(right * cos + out * sin, out * cos - right * sin, inRoom.z());
  }

  /** The stand of a run that begins at a place of this one and is turned further. */
  public FloorAxes next(double right, double out, double turn) {
    Vector3 begin = toRoom(new Vector3(right, out, 0));
    return new FloorAxes(begin.x(), begin.y(), heading + turn);
  }
}
