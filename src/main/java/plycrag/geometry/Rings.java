package plycrag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Brings the rings of areas into one order, so that the same area has the same corners. */
final class Rings {
  private static final Comparator<Coordinate> FROM_BELOW =
      Comparator.comparingDouble((Coordinate corner) -> corner.y)
          .thenComparingDouble(corner -> corner.x);

  private Rings() {}

  /**
   * An area whose outer edge runs counter-clockwise and whose holes run clockwise, each from its
   * lowest corner, of two the left one; no corner within a straight side.
   */
  static Polygon ordered(Polygon area) {
    LinearRing[] holes = new LinearRing[area.getNumInteriorRing()];
    for (int hole = 0; hole < holes.length; hole++) {
      holes[hole] = ordered(area.getInteriorRingN(hole), false);
    }
    return Shapes.factory().createPolygon(ordered(area.getExteriorRing(), true), holes);
  }

  private static LinearRing ordered(LinearRing ring, boolean counterClockwise) {
    List<Coordinate> corners = new ArrayList<>(List.of(ring.getCoordinates()));
    corners.remove(corners.size() - 1);
    corners.replaceAll(corner -> Shapes.at(corner.x, corner.y));
    if (Orientation.isCCW(ring.getCoordinates()) != counterClockwise) {
      Collections.reverse(corners);
    }
    List<Coordinate> turns = turns(corners);
    int lowest = turns.indexOf(Collections.min(turns, FROM_BELOW));
    Collections.rotate(turns, -lowest);
    return Shapes.factory().createLinearRing(Shapes.closed(turns));
  }

  /** The corners at which a ring turns; spikes without area, which overlays leave, are cut off. */
  private static List<Coordinate> turns(List<Coordinate> corners) {
    List<Coordinate> turns = new ArrayList<>(corners);
    for (int at = 0; at < turns.size() && turns.size() > 3; ) {
      Coordinate before = turns.get((at + turns.size() - 1) % turns.size());
      Coordinate after = turns.get((at + 1) % turns.size());
      if (isTurn(before, turns.get(at), after)) {
        at++;
      } else {
        turns.remove(at);
        at = Math.max(0, at - 1);
      }
    }
    return turns;
  }

  private static boolean isTurn(Coordinate before, Coordinate at, Coordinate after) {
    return !before.equals2D(at)
        && new LineSegment(before, after).distance(at) >= Tolerance.OFF_GRID
        && new LineSegment(before, at).distance(after) >= Tolerance.OFF_GRID
        && new LineSegment(at, after).distance(before) >= Tolerance.OFF_GRID;
  }
}
