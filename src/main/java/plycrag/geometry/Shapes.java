package plycrag.geometry;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Makes points, lines and polygons on the 1 µm grid. */
public final class Shapes {
  private static final PrecisionModel GRID = new PrecisionModel(1_000);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);

  private Shapes() {}

  /** A length on the 1 µm grid, mm; never a negative zero. */
  public static double onGrid(double length) {
    return GRID.makePrecise(length) + 0.0;
  }

  /** A point. */
  public static Point point(double u, double v) {
    return FACTORY.createPoint(at(u, v));
  }

  /** A straight line between two points. */
  public static LineString line(double u0, double v0, double u1, double v1) {
    return FACTORY.createLineString(new Coordinate[] {at(u0, v0), at(u1, v1)});
  }

  /**
   * A rectangle with sides along the axes, counter-clockwise from its lower left corner.
   *
   * @throws IllegalArgumentException if it has no area
   */
  public static Polygon rectangle(double left, double low, double right, double high) {
    if (!(left < right && low < high)) {
      throw new IllegalArgumentException(
          "no rectangle from " + left + "," + low + " to " + right + "," + high);
    }
    return FACTORY.createPolygon(
        new Coordinate[] {
          at(left, low), at(right, low), at(right, high), at(left, high), at(left, low)
        });
  }

  /**
   * A rectangle as large as a box.
   *
   * @throws IllegalArgumentException if it has no area
   */
  public static Polygon rectangle(Envelope box) {
    return rectangle(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  /** The sides of a polygon without holes, in order. */
  public static List<LineString> edges(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    return IntStream.range(1, ring.length)
        .mapToObj(at -> line(ring[at - 1].x, ring[at - 1].y, ring[at].x, ring[at].y))
        .toList();
  }

  /** What two geometries share; empty where they are apart. */
  public static Geometry shared(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
  }

  /** What is left of {@code a} without {@code b}. */
  public static Geometry without(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  /** All of them together; an empty geometry for none. */
  public static Geometry together(Collection<? extends Geometry> parts) {
    Geometry all = FACTORY.createGeometryCollection();
    List<Geometry> list = List.copyOf(parts);
    return list.isEmpty() ? all : OverlayNGRobust.union(list);
  }

  /** The least convex shape around points; not on the grid, for measuring only. */
  static Geometry hull(List<Coordinate> points) {
    return new ConvexHull(points.toArray(Coordinate[]::new), FACTORY).getConvexHull();
  }

  /** How far a point is from an area, mm; below zero inside it, by the distance to its boundary. */
  public static double distance(Point point, Polygon area) {
    double toBoundary = area.getBoundary().distance(point);
    return area.covers(point) ? -toBoundary : toBoundary;
  }

  /** The one factory, for what JTS makes itself. */
  static GeometryFactory factory() {
    return FACTORY;
  }

  private static Coordinate at(double u, double v) {
    return new Coordinate(onGrid(u), onGrid(v));
  }
}
