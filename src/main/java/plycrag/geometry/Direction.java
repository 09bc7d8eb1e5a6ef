package plycrag.geometry;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;

/**
 * A straight way on a facet, of length one, up or level to the right; and the way across it, which
 * leads to the right of one that leads up, and up from one that is level.
 *
 * @param u its part along u
 * @param v its part along v
 */
public record Direction(double u, double v) {
  /** Level, to the right. */
  public static final Direction LEVEL = new Direction(1, 0);

  /** Up the slope. */
  public static final Direction UP = new Direction(0, 1);

  /** Where a geometry begins and ends along a way, mm. */
  public record Span(double low, double high) {
    /** From the beginning to the end, mm. */
    public double size() {
      return high - low;
    }

    /** Half way, mm. */
    public double middle() {
      return (low + high) / 2;
    }
  }

  /** That of a line from its first point to its last, or back. */
  public static Direction of(LineString line) {
    Coordinate from = line.getCoordinateN(0);
    Coordinate to = line.getCoordinateN(line.getNumPoints() - 1);
    return of(to.x - from.x, to.y - from.y);
  }

  private static Direction of(double du, double dv) {
    double length = Math.sqrt(du * du + dv * dv);
    double u = du / length;
    double v = dv / length;
    if (Math.abs(v) < Tolerance.PARALLEL) {
      return LEVEL;
    }
    if (Math.abs(u) < Tolerance.PARALLEL) {
      return UP;
    }
    return v > 0 ? new Direction(u, v) : new Direction(-u, -v);
  }

  /** The way across. */
  public Direction across() {
    return u < 0 || u == 0 ? new Direction(v, -u + 0.0) : turned();
  }

  private Direction turned() {
    return new Direction(-v + 0.0, u);
  }

  /** Whether it is level or leads straight up. */
  public boolean isSquare() {
    return u == 0 || v == 0;
  }

  /** Whether another leads the same way. */
  public boolean isParallel(Direction other) {
    return sine(other) < Tolerance.PARALLEL;
  }

  /** The sine of the angle between two ways, 0 to 1. */
  public double sine(Direction other) {
    return Math.abs(u * other.v - v * other.u);
  }

  /** How far a place lies along it, mm. */
  public double along(Coordinate place) {
    return place.x * u + place.y * v;
  }

  /** How far a place lies along it, mm. */
  public double along(Point place) {
    return along(place.getCoordinate());
  }

  /** Where a geometry begins and ends along it. */
  public Span span(Geometry geometry) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Coordinate corner : geometry.getCoordinates()) {
      low = Math.min(low, along(corner));
      high = Math.max(high, along(corner));
    }
    return new Span(low, high);
  }

  /** The place so far along it and so far along the way across. */
  public Coordinate place(double along, double beside) {
    Direction across = across();
    return new Coordinate(u * along + across.u * beside, v * along + across.v * beside);
  }

  /** Its angle from the level, degrees, from 0 to below 180. */
  public double angle() {
    return Trig.angle(v, u);
  }
}
