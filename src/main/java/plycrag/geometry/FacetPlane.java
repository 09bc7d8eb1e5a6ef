package plycrag.geometry;

/**
 * Where a facet's plane stands in the room: y toward the climber, z up from the floor, origin below
 * the facet's lower edge.
 *
 * @param angle from vertical, degrees; positive leans out
 * @param raise height of the lower edge, mm
 */
public record FacetPlane(double angle, double raise) {

  /**
   * Toward the climber, mm.
   *
   * @param v up the slope, mm
   * @param behind square to the face, away from the climber, mm
   */
  public double y(double v, double behind) {
    return v * Trig.sin(angle) - behind * Trig.cos(angle);
  }

  /** Above the floor, mm; see {@link #y}. */
  public double z(double v, double behind) {
    return raise + v * Trig.cos(angle) + behind * Trig.sin(angle);
  }
}
