package plycrag.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.linemerge.LineMerger;
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

  /** The sides of a polygon without holes, in order. */
  public static List<LineString> edges(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    return IntStream.range(1, ring.length)
        .mapToObj(at -> line(ring[at - 1].x, ring[at - 1].y, ring[at].x, ring[at].y))
        .toList();
  }

  /**
   * The edges of areas that touch, each drawn once and none that lies on the edge of another area;
   * chains of straight lines in a fixed order.
   *
   * @param areas whose edges are wanted
   * @param drawn an area whose edge is drawn already, empty for none
   */
  public static List<LineString> edgesOnce(Collection<Polygon> areas, Collection<Polygon> drawn) {
    Geometry edges = together(areas.stream().map(Polygon::getBoundary).toList());
    Geometry rest = without(edges, together(drawn.stream().map(Polygon::getBoundary).toList()));
    LineMerger merger = new LineMerger();
    merger.add(rest);
    List<LineString> chains = new ArrayList<>();
    for (Object chain : merger.getMergedLineStrings()) {
      LineString line = (LineString) chain;
      line.normalize();
      chains.add(line);
    }
    chains.sort(null);
    return chains;
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

  /** How far a point is from an area, mm; below zero inside it, by the distance to its boundary. */
  public static double distance(Point point, Polygon area) {
    double toBoundary = area.getBoundary().distance(point);
    return area.covers(point) ? -toBoundary : toBoundary;
  }

  private static Coordinate at(double u, double v) {
    return new Coordinate(onGrid(u), onGrid(v));
  }
}
