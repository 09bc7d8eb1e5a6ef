package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.FoldCut;

/**
 * A side of an area against the sheets' back, and how it goes on behind them.
 *
 * @param edge in (u, v), counter-clockwise round its area
 * @param slope how far it moves outward for each millimetre behind
 */
record SlopingSide(LineString edge, double slope) {
  /** The sides of a facet's ground that slope. */
  static List<SlopingSide> of(Polygon outer, List<FoldCut> cuts) {
    List<SlopingSide> sides = new ArrayList<>();
    List<LineString> edges = Shapes.outerEdges(outer);
    for (int side = 0; side < edges.size(); side++) {
      sides.add(new SlopingSide(edges.get(side), cuts.get(side).slope()));
    }
    return sides;
  }

  /** Whether an edge lies on this one's line, beside it over some length. */
  boolean holds(LineString other) {
    LineSegment line = line();
    Coordinate from = other.getCoordinateN(0);
    Coordinate to = other.getCoordinateN(1);
    if (line.distancePerpendicular(from) > Tolerance.TOUCH
        || line.distancePerpendicular(to) > Tolerance.TOUCH) {
      return false;
    }
    double one = line.projectionFactor(from);
    double two = line.projectionFactor(to);
    double shared = Math.min(1, Math.max(one, two)) - Math.max(0, Math.min(one, two));
    return shared * line.getLength() > Tolerance.GRID;
  }

  /**
   * The slope for an area of which such an edge is a side: the other way round if it lies beyond.
   */
  double slopeFor(LineString other) {
    LineSegment line = line();
    boolean sameWay =
        line.projectionFactor(other.getCoordinateN(1))
            > line.projectionFactor(other.getCoordinateN(0));
    return sameWay ? slope : -slope + 0.0;
  }

  private LineSegment line() {
    return new LineSegment(edge.getCoordinateN(0), edge.getCoordinateN(1));
  }
}
