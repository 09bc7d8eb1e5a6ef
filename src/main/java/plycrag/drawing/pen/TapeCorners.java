package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;

/**
 * The corners of an area that are read with a tape: a round edge, which is told by short sides that
 * turn little, is read at its four quarters.
 */
public final class TapeCorners {
  /** An edge that turns less at a place is round there, as the cosine of 20°. */
  private static final double ROUND = 0.94;

  /** Sides of circles are shorter, mm: those of ten metres across have 45. */
  private static final double CHORD = 50;

  private TapeCorners() {}

  public static List<Coordinate> of(Polygon area) {
    List<Coordinate> corners = new ArrayList<>();
    addCorners(area.getExteriorRing(), corners);
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      addCorners(area.getInteriorRingN(hole), corners);
    }
    return corners;
  }

  private static void addCorners(LinearRing edge, List<Coordinate> corners) {
    Coordinate[] ring = edge.getCoordinates();
    int count = ring.length - 1;
    boolean isRound = false;
    for (int at = 0; at < count; at++) {
      if (isSharp(ring[(at + count - 1) % count], ring[at], ring[at + 1])) {
        corners.add(ring[at]);
      } else {
        isRound = true;
      }
    }
    if (isRound) {
      Direction.Span across = Direction.LEVEL.span(edge);
      Direction.Span up = Direction.UP.span(edge);
      corners.add(new Coordinate(across.low(), up.low()));
      corners.add(new Coordinate(across.high(), up.high()));
    }
  }

  private static boolean isSharp(Coordinate before, Coordinate corner, Coordinate after) {
    double du = corner.x - before.x;
    double dv = corner.y - before.y;
    double eu = after.x - corner.x;
    double ev = after.y - corner.y;
    double one = corner.distance(before);
    double other = corner.distance(after);
    return Math.max(one, other) > CHORD || (du * eu + dv * ev) / (one * other) < ROUND;
  }
}
