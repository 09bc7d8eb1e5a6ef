package plycrag.solve.nest;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;

/**
 * Where a piece lies on its sheet: the rigid map from the facet's (u, v) to the sheet's (x, y). A
 * piece whose back lies up is mirrored in u first, then turned, then moved.
 *
 * @param mirrored whether its back lies up
 * @param turn how it is turned
 * @param x the facet's origin on the sheet, mm
 * @param y likewise
 */
public record Placement(boolean mirrored, Turn turn, double x, double y) {
  /** Across the sheet from its lower left corner, mm. */
  public double x(Point place) {
    return at(place.getX(), place.getY()).x;
  }

  /** Up the sheet from its lower left corner, mm. */
  public double y(Point place) {
    return at(place.getX(), place.getY()).y;
  }

  /** Where a place of the facet lies on the sheet. */
  public Coordinate of(Coordinate place) {
    return at(place.x, place.y);
  }

  /** Where an area lies on the sheet, openings in it left out. */
  public Polygon of(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    List<Coordinate> corners = new ArrayList<>();
    for (int at = 1; at < ring.length; at++) {
      corners.add(of(ring[at]));
    }
    return Shapes.polygon(corners);
  }

  private Coordinate at(double u, double v) {
    double across = mirrored ? -u : u;
    return new Coordinate(
        Shapes.onGrid(turn.x(across, v) + x), Shapes.onGrid(turn.y(across, v) + y));
  }

  /**
   * The same once the sheet is turned over from left to right.
   *
   * @param width of the sheet, mm
   */
  public Placement turnedOver(double width) {
    return new Placement(!mirrored, turn.undone(), Shapes.onGrid(width - x), y);
  }

  /** The same, turned about the sheet's origin. */
  Placement turned(Turn more) {
    return new Placement(mirrored, turn.then(more), more.x(x, y), more.y(x, y));
  }

  /** The same, moved on the sheet. */
  Placement moved(double dx, double dy) {
    return new Placement(mirrored, turn, Shapes.onGrid(x + dx), Shapes.onGrid(y + dy));
  }
}
