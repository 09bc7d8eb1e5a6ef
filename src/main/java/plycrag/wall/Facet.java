package plycrag.wall;

import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Trig;

/**
 * One plane of the climbing face.
 *
 * @param name printed before every mark on it
 * @param angle from vertical, degrees; positive leans out over the climber
 * @param width across, mm
 * @param length up the slope, mm
 * @param raise height of its lower edge above the floor, vertical, mm
 */
public record Facet(String name, double angle, double width, double length, double raise) {

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

  /** Height above the floor of a line across the face at {@code v}, mm. */
  public double heightAt(double v) {
    return raise + v * Trig.cos(angle);
  }

  /** Height of the face's upper edge above the floor, mm. */
  public double overallHeight() {
    return heightAt(length);
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
