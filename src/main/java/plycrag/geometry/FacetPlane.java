package plycrag.geometry;

/**
 * Where a facet's plane stands. On the facet u runs to the right, v up the slope, and w behind the
 * face, square to it; in its run x runs to the right, y toward the climber, z up from the floor.
 *
 * @param angle from vertical, degrees; positive leans out
 * @param left where u begins, x in the run, mm
 * @param out how far its lower edge stands toward the climber, y in the run, mm
 * @param raise height of its lower edge, mm
 * @param floorAxes where the run stands in the room
 */
public record FacetPlane(double angle, double left, double out, double raise, FloorAxes floorAxes) {

  /**
   * Toward the climber, in the run, mm.
   *
   * @param v up the slope, mm
   * @param behind square to the face, away from the climber, mm
   */
  public double y(double v, double behind) {
    return out + v * Trig.sin(angle) - behind * Trig.cos(angle);
  }

  /** Above the floor, mm; see {@link #y}. */
  public double z(double v, double behind) {
    return raise + v * Trig.cos(angle) + behind * Trig.sin(angle);
  }

  /** A place on the facet in the room. */
  public Vector3 toRoom(Vector3 onFacet) {
    return floorAxes.toRoom(
        new Vector3(left + onFacet.x(), y(onFacet.y(), onFacet.z()), z(onFacet.y(), onFacet.z())));
  }

  /** A place in the room as (u, v, w) of the facet. */
  public Vector3 fromRoom(Vector3 inRoom) {
    Vector3 inRun = floorAxes.fromRoom(inRoom);
    double y = inRun.y() - out;
    double z = inRun.z() - raise;
    double sin = Trig.sin(angle);
    double cos = Trig.cos(angle);
    return new Vector3(inRun.x() - left, y * sin + z * cos, z * sin - y * cos);
  }

  /** The direction square to the face, toward the climber, in the room. */
  public Vector3 normal() {
    Vector3 away = toRoom(new Vector3(0, 0, -1));
    return away.minus(toRoom(new Vector3(0, 0, 0)));
  }
}
