package plycrag.geometry;

import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** How far points lie from edges and areas, with nothing built to find out. */
public final class Distances {
  private Distances() {}

  /** How far a point is from an area, mm; below zero inside it, by the distance to its boundary. */
  public static double from(Point point, Polygon area) {
    Coordinate place = point.getCoordinate();
    double toBoundary = from(place, area.getExteriorRing());
    boolean covered = covers(place, area.getExteriorRing());
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      LinearRing ring = area.getInteriorRingN(hole);
      toBoundary = Math.min(toBoundary, from(place, ring));
      covered &= toBoundary == 0 || !covers(place, ring);
    }
    return covered ? -toBoundary : toBoundary;
  }

  /** Whether a point lies in an area or on its boundary. */
  public static boolean covers(Polygon area, Point point) {
    Coordinate place = point.getCoordinate();
    boolean covered =
        area.getEnvelopeInternal().covers(place) && covers(place, area.getExteriorRing());
    for (int hole = 0; covered && hole < area.getNumInteriorRing(); hole++) {
      covered = locate(place, area.getInteriorRingN(hole)) != Location.INTERIOR;
    }
    return covered;
  }

  /** How far a point is from a straight edge, mm. */
  public static double from(Point point, LineString edge) {
    return Distance.pointToSegment(
        point.getCoordinate(), edge.getCoordinateN(0), edge.getCoordinateN(1));
  }

  private static double from(Coordinate place, LinearRing ring) {
    CoordinateSequence corners = ring.getCoordinateSequence();
    double least = Double.POSITIVE_INFINITY;
    for (int at = 1; at < corners.size(); at++) {
      double one =
          Distance.pointToSegment(place, corners.getCoordinate(at - 1), corners.getCoordinate(at));
      least = Math.min(least, one);
    }
    return least;
  }

  /** Whether a place lies in a ring or on it. */
  static boolean covers(Coordinate place, LinearRing ring) {
    return locate(place, ring) != Location.EXTERIOR;
  }

  private static int locate(Coordinate place, LinearRing ring) {
    return RayCrossingCounter.locatePointInRing(place, ring.getCoordinateSequence());
  }
}
