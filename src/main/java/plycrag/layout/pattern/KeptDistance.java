package plycrag.layout.pattern;

import org.locationtech.jts.geom.Point;
import plycrag.finding.Measure;
import plycrag.wall.Inserts;

/**
 * A distance that part of an insert keeps.
 *
 * @param part of the insert
 * @param extent from what
 * @param required from rim to rim, mm
 */
record KeptDistance(InsertPart part, TakenRoom extent, double required) {

  /** From the insert's centre, mm. */
  double reach(Inserts insert) {
    return part.radius(insert) + required;
  }

  /** What is found for an insert at a place, against what is required. */
  Measure measure(Point place, Inserts insert) {
    return measure(extent.from(place), insert);
  }

  private Measure measure(double fromCentre, Inserts insert) {
    return new Measure(fromCentre - part.radius(insert), required);
  }

  /** Whether that is no shortfall; how deep inside a place lies is asked only if it matters. */
  boolean isKept(Point place, Inserts insert) {
    double outside = extent.outside(place);
    return !InsertSurroundings.fallsShort(measure(outside, insert))
        && (outside > 0 || !InsertSurroundings.fallsShort(measure(place, insert)));
  }
}
