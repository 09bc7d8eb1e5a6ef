package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.wall.Corner.Part;

/**
 * The side of a facet at which another wall stands: the parts of their corner that lie on it, from
 * below, and how it goes on once the other wall has ended.
 *
 * @param isRight whether it is the right side
 * @param parts of the corner, in the plane's (u, v)
 * @param free how the side goes on above them, if it does
 */
record FacetSide(boolean isRight, List<Part> parts, Optional<Part> free) {
  /** Further than any facet reaches, mm. */
  private static final double FAR = 1e6;

  FacetSide {
    parts = List.copyOf(parts);
  }

  /**
   * A facet as it would be without the other wall, made to end in the corner: what lies beyond it
   * is cut off, and where its side runs straight up short of it, the side is moved out to it.
   *
   * @return one area or several; none if nothing is left
   */
  Geometry bounded(Geometry area) {
    List<Polygon> beyond = beyond();
    List<Polygon> reached = new ArrayList<>(Shapes.areas(area));
    for (LineString edge : outermost(area)) {
      beyond.forEach(strip -> reach(edge, strip).ifPresent(reached::add));
    }
    return beyond.isEmpty()
        ? area
        : Shapes.without(Shapes.together(reached), Shapes.together(beyond));
  }

  /** What lies beyond each part of the corner, and beyond the side above it. */
  private List<Polygon> beyond() {
    return Stream.concat(parts.stream(), free.stream())
        .filter(part -> part.high().y - part.low().y > Tolerance.TOUCH)
        .map(part -> strip(part.low(), part.high()))
        .toList();
  }

  private Polygon strip(Coordinate low, Coordinate high) {
    return Shapes.polygon(
        List.of(low, high, new Coordinate(far(), high.y), new Coordinate(far(), low.y)));
  }

  private double far() {
    return isRight ? FAR : -FAR;
  }

  /** The edges of an area that run straight up furthest out. */
  private List<LineString> outermost(Geometry area) {
    Envelope box = area.getEnvelopeInternal();
    double side = isRight ? box.getMaxX() : box.getMinX();
    return Shapes.areas(area).stream()
        .flatMap(part -> Shapes.outerEdges(part).stream())
        .filter(edge -> Direction.of(edge).equals(Direction.UP))
        .filter(edge -> Math.abs(edge.getCoordinateN(0).x - side) < Tolerance.TOUCH)
        .toList();
  }

  /** From an edge outward, as high as both it and a strip go. */
  private Optional<Polygon> reach(LineString edge, Polygon strip) {
    Envelope one = edge.getEnvelopeInternal();
    Envelope other = strip.getEnvelopeInternal();
    double low = Math.max(one.getMinY(), other.getMinY());
    double high = Math.min(one.getMaxY(), other.getMaxY());
    double side = one.getMinX();
    return high - low < Tolerance.TOUCH
        ? Optional.empty()
        : Optional.of(Shapes.rectangle(Math.min(side, far()), low, Math.max(side, far()), high));
  }
}
