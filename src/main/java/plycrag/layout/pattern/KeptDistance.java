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
    return new Measure(extent.from(place) - part.radius(insert), required);
  }
}
