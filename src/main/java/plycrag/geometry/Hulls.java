package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The least convex areas around things, and whether one is its own. */
public final class Hulls {
  private Hulls() {}

  /** Whether an area has neither holes nor re-entrant corners. */
  public static boolean isConvex(Polygon area) {
    return Convex.is(area)
        || (area.getNumInteriorRing() == 0
            && area.convexHull().getArea() - area.getArea() < Tolerance.TOUCH);
  }

  /** The least convex area around two. */
  public static Polygon hull(Polygon one, Polygon other) {
    List<Coordinate> corners = new ArrayList<>(List.of(one.getCoordinates()));
    corners.addAll(List.of(other.getCoordinates()));
    return Shapes.largest(hull(corners));
  }

  /** The smallest convex area around some points that do not lie on one line; not on the grid. */
  public static Polygon around(List<Coordinate> points) {
    return (Polygon) hull(points);
  }

  /** The least convex shape around points; not on the grid, for measuring only. */
  public static Geometry hull(List<Coordinate> points) {
    return new ConvexHull(points.toArray(Coordinate[]::new), Shapes.factory()).getConvexHull();
  }
}
