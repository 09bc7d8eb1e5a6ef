package plycrag.wall;

import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Shapes;
import plycrag.geometry.Trig;

/**
 * One plane of the climbing face.
 *
 * @param name printed before every mark on it
 * @param angle from vertical, degrees; positive leans out over the climber
 * @param width across, mm
 * @param length up the slope, mm
 * @param plane where it stands in the room
 * @param below where it meets the facet below it, if there is one
 * @param above where it meets the facet above it, if there is one
 */
public record Facet(
    String name,
    double angle,
    double width,
    double length,
    FacetPlane plane,
    Optional<Fold> below,
    Optional<Fold> above) {

  /** The facet's edge in (u, v). */
  public Polygon outline() {
    return Shapes.rectangle(0, 0, width, length);
  }

  /** The part of the face where a hole's centre may lie; empty if the setback leaves none. */
  public Optional<Polygon> setback(double setback) {
    boolean some = 2 * setback < Math.min(width, length);
    return some
        ? Optional.of(Shapes.rectangle(setback, setback, width - setback, length - setback))
        : Optional.empty();
  }

  /** Height of the face's lower edge above the floor, mm. */
  public double raise() {
    return plane.raise();
  }

  /** Height of the face's upper edge above the floor, mm. */
  public double overallHeight() {
    return plane.z(length, 0);
  }

  /**
   * How far the upper edge stands out in front of the lower one, level, mm; negative for a slab.
   */
  public double reach() {
    return length * Trig.sin(angle);
  }

  /** Whether it is out of plumb. */
  public boolean leans() {
    return angle != 0;
  }
}
