package plycrag.geometry;

/**
 * Where a facet's plane stands in the room: x to the right, y toward the climber, z up from the
 * floor. On the facet u runs to the right, v up the slope, and w behind the face, square to it.
 *
 * @param angle from vertical, degrees; positive leans out
 * @param out how far its lower edge stands toward the climber, mm
 * @param raise height of its lower edge, mm
 */
public record FacetPlane(double angle, double out, double raise) {

  /**
   * Toward the climber, mm.
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
  public Place toRoom(Place onFacet) {
    return new Place(onFacet.x(), y(onFacet.y(), onFacet.z()), z(onFacet.y(), onFacet.z()));
  }

  /** A place in the room as (u, v, w) of the facet. */
  public Place fromRoom(Place inRoom) {
    double y = inRoom.y() - out;
    double z = inRoom.z() - raise;
    double sin = Trig.sin(angle);
    double cos = Trig.cos(angle);
    return new Place(inRoom.x(), y * sin + z * cos, z * sin - y * cos);
  }
}
