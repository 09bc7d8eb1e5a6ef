package plycrag.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Makes points, lines and polygons on the 1 µm grid.
 *
 * <p>What areas share and leave of each other comes of {@link Overlay}, which no sliver defeats.
 */
public final class Shapes {
  static final PrecisionModel GRID = new PrecisionModel(1 / Tolerance.GRID);
  private static final GeometryFactory FACTORY = new GeometryFactory(GRID);

  /** An area smaller than this is none, mm²: a touch along a millimetre. */
  private static final double CRUMB = Tolerance.TOUCH;

  /** How far a circle's polygon may stand off it, mm. */
  private static final double ROUND = 0.05;

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

  /** A straight line between two places that need not lie on the grid, for measuring only. */
  static LineString exactLine(Coordinate from, Coordinate to) {
    return FACTORY.createLineString(new Coordinate[] {from, to});
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

  /**
   * A polygon through corners, the first not repeated, in {@link Rings#ordered} order.
   *
   * @throws IllegalArgumentException if it is not simple or has no area
   */
  public static Polygon polygon(List<Coordinate> corners) {
    Polygon area = FACTORY.createPolygon(closed(corners));
    if (!area.isValid() || area.isEmpty()) {
      throw new IllegalArgumentException("no simple polygon: " + area);
    }
    return Rings.ordered(area);
  }

  /** A polygon through corners that keep their order and their numbers, the first not repeated. */
  public static Polygon ring(List<Coordinate> corners) {
    return FACTORY.createPolygon(closed(corners));
  }

  /**
   * The image of what lies left of a mirror, to the right of it; its ring begins at its lowest
   * corner, of those at the leftmost.
   *
   * @param about the sum of a place across and of its image, mm
   */
  public static Polygon mirrored(Polygon area, double about) {
    List<Coordinate> corners = new ArrayList<>();
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    for (int at = ring.length - 1; at > 0; at--) {
      corners.add(at(about - ring[at].x, ring[at].y));
    }
    Coordinate lowest =
        Collections.min(
            corners,
            Comparator.comparingDouble((Coordinate corner) -> corner.y)
                .thenComparingDouble(corner -> corner.x));
    Collections.rotate(corners, -corners.indexOf(lowest));
    return ring(corners);
  }

  /** The same of any geometry. */
  public static Geometry mirrored(Geometry geometry, double about) {
    return new AffineTransformation(-1, 0, about, 0, 1, 0).transform(geometry);
  }

  /** The closed lines around an area: its outer one, then those of its openings. */
  public static List<LineString> rings(Polygon area) {
    List<LineString> rings = new ArrayList<>();
    rings.add(area.getExteriorRing());
    openings(area).forEach(opening -> rings.add(opening.getExteriorRing()));
    return rings;
  }

  /** The openings in an area. */
  public static List<Polygon> openings(Polygon area) {
    List<Polygon> openings = new ArrayList<>();
    for (int at = 0; at < area.getNumInteriorRing(); at++) {
      openings.add(FACTORY.createPolygon(area.getInteriorRingN(at).getCoordinates()));
    }
    return openings;
  }

  /**
   * A polygon of equal sides around a circle, none of whose corners is further from it than 0.05
   * mm.
   */
  public static Polygon circle(double u, double v, double diameter) {
    int sides = 24;
    while (diameter / 2 * (1 / Trig.cos(180.0 / sides) - 1) > ROUND) {
      sides += 4;
    }
    double radius = diameter / 2 / Trig.cos(180.0 / sides);
    List<Coordinate> corners = new ArrayList<>();
    for (int at = 0; at < sides; at++) {
      double angle = 360.0 * (at + 0.5) / sides;
      corners.add(new Coordinate(u + radius * Trig.cos(angle), v + radius * Trig.sin(angle)));
    }
    return polygon(corners);
  }

  static Coordinate[] closed(List<Coordinate> corners) {
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(corner -> ring.add(at(corner.x, corner.y)));
    ring.add(ring.get(0));
    return ring.toArray(Coordinate[]::new);
  }

  /** The sides of a polygon in order, those of its holes last. */
  public static List<LineString> edges(Polygon area) {
    List<LineString> edges = new ArrayList<>(edges(area.getExteriorRing()));
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      edges.addAll(edges(area.getInteriorRingN(hole)));
    }
    return edges;
  }

  private static List<LineString> edges(LinearRing closed) {
    Coordinate[] ring = closed.getCoordinates();
    return IntStream.range(1, ring.length)
        .mapToObj(at -> line(ring[at - 1].x, ring[at - 1].y, ring[at].x, ring[at].y))
        .toList();
  }

  /** The sides of a polygon's outer edge, in order. */
  public static List<LineString> outerEdges(Polygon area) {
    return edges(area.getExteriorRing());
  }

  /**
   * The areas of a geometry, from below, then from the left: outer edges counter-clockwise, holes
   * clockwise, each from its lowest corner, of two the left one; no corner within a straight side.
   */
  public static List<Polygon> areas(Geometry geometry) {
    List<Polygon> areas = new ArrayList<>();
    parts(geometry).stream()
        .filter(area -> area.getArea() > CRUMB)
        .forEach(area -> areas.add(Rings.ordered(area)));
    areas.sort(
        Comparator.comparingDouble((Polygon area) -> area.getEnvelopeInternal().getMinY())
            .thenComparingDouble(area -> area.getEnvelopeInternal().getMinX()));
    return areas;
  }

  /**
   * The largest area of a geometry, ordered.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Polygon largest(Geometry geometry) {
    return largest(areas(geometry));
  }

  /**
   * The largest of areas; of equal ones the first.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Polygon largest(List<Polygon> areas) {
    return areas.stream()
        .max(Comparator.comparingDouble(Polygon::getArea))
        .orElseThrow(() -> new IllegalArgumentException("no area"));
  }

  /** What two geometries share; of two areas no line or point. Empty where they are apart. */
  public static Geometry shared(Geometry a, Geometry b) {
    Geometry both = Overlay.shared(a, b);
    return b.getDimension() == 2 ? ofKind(a, both) : both;
  }

  /** The areas that two areas share, as {@link #areas} has them. */
  public static List<Polygon> sharedAreas(Polygon a, Polygon b) {
    if (a.getEnvelopeInternal().intersection(b.getEnvelopeInternal()).getArea() <= CRUMB) {
      return List.of();
    }
    return Rectangles.shared(a, b)
        .or(() -> Convex.shared(a, b))
        .orElseGet(() -> areas(shared(a, b)))
        .stream()
        .filter(area -> area.getArea() > CRUMB)
        .toList();
  }

  /** Of an area only areas. */
  private static Geometry ofKind(Geometry before, Geometry after) {
    return before.getDimension() == 2 ? whole(parts(after)) : after;
  }

  /** Areas that do not meet, as one. */
  public static Geometry whole(List<Polygon> parts) {
    return FACTORY.createMultiPolygon(parts.toArray(Polygon[]::new));
  }

  private static List<Polygon> parts(Geometry geometry) {
    List<Polygon> parts = new ArrayList<>();
    for (int at = 0; at < geometry.getNumGeometries(); at++) {
      if (geometry.getGeometryN(at) instanceof Polygon area && !area.isEmpty()) {
        parts.add(area);
      }
    }
    return parts;
  }

  /** What is left of {@code a} without {@code b}. */
  public static Geometry without(Geometry a, Geometry b) {
    return ofKind(a, Overlay.without(a, b));
  }

  /** What is left of an area without others, taken one by one from what they touch of it. */
  public static Geometry without(Geometry area, List<Polygon> others) {
    Optional<List<Polygon>> simple = Rectangles.without(area, others);
    if (simple.isPresent()) {
      return whole(simple.get());
    }
    List<Polygon> rest = parts(area);
    for (Polygon other : others) {
      rest = rest.stream().flatMap(part -> without(part, other)).toList();
    }
    return whole(rest);
  }

  private static Stream<Polygon> without(Polygon part, Polygon other) {
    if (part.getEnvelopeInternal().intersection(other.getEnvelopeInternal()).getArea() <= 0) {
      return Stream.of(part);
    }
    return Rectangles.without(part, List.of(other))
        .or(() -> Convex.without(part, other))
        .orElseGet(() -> parts(without((Geometry) part, (Geometry) other)))
        .stream();
  }

  /** All of them together; an empty geometry for none. */
  public static Geometry together(Collection<? extends Geometry> parts) {
    Geometry all = FACTORY.createGeometryCollection();
    List<Geometry> list = List.copyOf(parts);
    return list.isEmpty() ? all : Overlay.together(list);
  }

  /** The one factory, for what JTS makes itself. */
  static GeometryFactory factory() {
    return FACTORY;
  }

  static Coordinate at(double u, double v) {
    return new Coordinate(onGrid(u), onGrid(v));
  }
}
