package plycrag.solve.scatter;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * The part of an area's boundary that crosses a box. A box that none crosses lies as a whole inside
 * or outside, so that one place speaks for all.
 */
final class Region {
  private final List<Edge> edges;

  /**
   * @param edges in the order of the boundary
   */
  Region(List<Edge> edges) {
    this.edges = edges;
  }

  /** A straight piece of the boundary. */
  record Edge(Coordinate from, Coordinate to) {}

  /** All of an area's boundary. */
  static Region of(Geometry area) {
    List<Edge> edges = new ArrayList<>();
    for (Object line : LinearComponentExtracter.getLines(area)) {
      CoordinateSequence places = ((LineString) line).getCoordinateSequence();
      for (int at = 1; at < places.size(); at++) {
        edges.add(new Edge(places.getCoordinate(at - 1), places.getCoordinate(at)));
      }
    }
    return new Region(edges);
  }

  /** What of it crosses or touches a box. */
  Region within(Envelope box) {
    if (edges.isEmpty()) {
      return this;
    }
    RectangleLineIntersector rectangle = new RectangleLineIntersector(box);
    return new Region(
        edges.stream().filter(edge -> rectangle.intersects(edge.from(), edge.to())).toList());
  }

  /** Whether every place of the box is inside the area, or every one outside. */
  boolean isUniform() {
    return edges.isEmpty();
  }
}
