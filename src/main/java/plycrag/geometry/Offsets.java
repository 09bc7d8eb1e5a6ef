package plycrag.geometry;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Moves the sides of areas. */
public final class Offsets {
  /** Corners of five degrees keep their points, in distances. */
  private static final double SHARPEST = 25;

  private Offsets() {}

  /**
   * A polygon with every side of its outer edge moved outward by a distance of its own, its
   * neighbours made longer or shorter to meet it; corners keep their numbers. Holes stay.
   *
   * @param outward by the side's number, from the one after the first corner, mm
   * @throws IllegalArgumentException if two neighbours run along one line
   */
  public static Polygon moved(Polygon area, IntToDoubleFunction outward) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    int sides = ring.length - 1;
    Coordinate[] corners = new Coordinate[ring.length];
    for (int at = 0; at < sides; at++) {
      int before = (at + sides - 1) % sides;
      corners[at] =
          meeting(
              ring[at],
              way(ring[before], ring[at]),
              way(ring[at], ring[at + 1]),
              outward.applyAsDouble(before),
              outward.applyAsDouble(at));
    }
    corners[sides] = corners[0];
    LinearRing[] holes = new LinearRing[area.getNumInteriorRing()];
    for (int hole = 0; hole < holes.length; hole++) {
      holes[hole] = area.getInteriorRingN(hole);
    }
    return Shapes.factory().createPolygon(Shapes.factory().createLinearRing(corners), holes);
  }

  static Coordinate way(Coordinate from, Coordinate to) {
    return new Coordinate(to.x - from.x, to.y - from.y);
  }

  /**
   * Where two sides meet, once both are moved to their right.
   *
   * @param corner where they met
   * @param one the way the first runs, of any length
   * @param other the way the second runs
   * @throws IllegalArgumentException if they run along one line
   */
  static Coordinate meeting(
      Coordinate corner, Coordinate one, Coordinate other, double first, double second) {
    double oneLength = Math.sqrt(one.x * one.x + one.y * one.y);
    double otherLength = Math.sqrt(other.x * other.x + other.y * other.y);
    double turn = one.x * other.y - one.y * other.x;
    if (Math.abs(turn) < Tolerance.VANISHING * oneLength * otherLength) {
      throw new IllegalArgumentException("sides along one line at " + corner);
    }
    double along = first * oneLength;
    double beside = second * otherLength;
    double u = (one.x * beside - other.x * along) / turn;
    double v = (one.y * beside - other.y * along) / turn;
    return Shapes.at(corner.x + u, corner.y + v);
  }

  /** An area made narrower by a distance on all sides, corners kept; parts from below. */
  public static List<Polygon> narrowed(Polygon area, double distance) {
    return offset(area, -distance);
  }

  /** A geometry made wider by a distance on all sides, corners kept; parts from below. */
  public static List<Polygon> widened(Geometry area, double distance) {
    return offset(area, distance);
  }

  private static List<Polygon> offset(Geometry area, double outward) {
    BufferParameters mitred = new BufferParameters();
    mitred.setEndCapStyle(BufferParameters.CAP_SQUARE);
    mitred.setJoinStyle(BufferParameters.JOIN_MITRE);
    mitred.setMitreLimit(SHARPEST);
    return Shapes.areas(BufferOp.bufferOp(area, outward, mitred));
  }

  /**
   * The area part of the way from one to another, corner for corner.
   *
   * @param part 0 for the first, 1 for the other
   */
  public static Polygon between(Polygon one, Polygon other, double part) {
    Coordinate[] from = one.getExteriorRing().getCoordinates();
    Coordinate[] to = other.getExteriorRing().getCoordinates();
    Coordinate[] ring = new Coordinate[from.length];
    for (int corner = 0; corner < from.length; corner++) {
      ring[corner] =
          Shapes.at(
              between(from[corner].x, to[corner].x, part),
              between(from[corner].y, to[corner].y, part));
    }
    return Shapes.factory().createPolygon(ring);
  }

  private static double between(double one, double other, double part) {
    return one == other ? one : one + (other - one) * part;
  }
}
