package plycrag.layout.nest;

import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;

/**
 * Where a piece lies on its sheet: the rigid map from the facet's (u, v) to the sheet's (x, y).
 *
 * @param originU the facet's u at the sheet's lower left corner, mm
 * @param originV the facet's v there, mm
 */
public record Placement(double originU, double originV) {

  /** Across the sheet from its lower left corner, mm. */
  public double x(Point place) {
    return Shapes.onGrid(place.getX() - originU);
  }

  /** Up the sheet from its lower left corner, mm. */
  public double y(Point place) {
    return Shapes.onGrid(place.getY() - originV);
  }
}
