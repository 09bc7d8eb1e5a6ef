package plycrag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Where the middle of a cutter goes round an area that is cut from a sheet: beside its sides by the
 * cutter's radius, corners kept sharp. Openings come first, then the outer edge, which is left out
 * where it lies on the sheet's own edge.
 */
public final class Contours {
  /** How far beyond the sheet's edge a cut begins and ends, mm. */
  private static final double BEYOND = 1;

  /** How many diameters a cutter may go beyond the sheet's edge: round a corner of 15°. */
  private static final double FARTHEST = 4;

  private final Polygon area;
  private final Envelope sheet;
  private final double radius;

  /**
   * @param area what is kept, ordered as {@link Shapes#areas} does
   * @param sheet what it is cut from
   * @param radius of the cutter, mm
   */
  public Contours(Polygon area, Envelope sheet, double radius) {
    this.area = area;
    this.sheet = sheet;
    this.radius = radius;
  }

  /**
   * A way of the cutter's middle.
   *
   * @param points in order against the clock round what it goes round; the first not repeated
   * @param closed whether it ends where it begins
   * @param inside whether it goes round within an opening
   */
  public record Contour(List<Coordinate> points, boolean closed, boolean inside) {
    /** Copies the points. */
    public Contour {
      points = List.copyOf(points);
    }

    /** The same the other way round. */
    public Contour reversed() {
      List<Coordinate> turned = new ArrayList<>(points);
      Collections.reverse(turned);
      return new Contour(turned, closed, inside);
    }
  }

  /** All of them. */
  public List<Contour> all() {
    List<Contour> all = new ArrayList<>();
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      Polygon moved = Offsets.moved(opening(hole), side -> -radius);
      all.add(new Contour(corners(moved), true, true));
    }
    all.addAll(outer());
    return all;
  }

  /** The smallest box around them; null where nothing is cut. */
  public Envelope box() {
    Envelope box = new Envelope();
    all().forEach(contour -> contour.points().forEach(box::expandToInclude));
    return box;
  }

  /**
   * How far beyond the sheet's edge a cutter may go round a sharp corner, mm.
   *
   * @param diameter of the cutter, mm
   */
  public static double farthest(double diameter) {
    return FARTHEST * diameter + BEYOND;
  }

  /** Whether a cutter goes no {@link #farthest farther} than it may. */
  public boolean stayNear() {
    Envelope allowed = sheet.copy();
    allowed.expandBy(farthest(2 * radius));
    return box().isNull() || allowed.contains(box());
  }

  /** Whether a cutter gets everywhere beside the sides without cutting into what is kept. */
  public boolean areFree() {
    return keepsDirections() && spares(area);
  }

  /** Whether a cutter that goes along them leaves another area whole. */
  public boolean spares(Polygon other) {
    return all().stream().allMatch(contour -> isClear(contour, other));
  }

  private boolean isClear(Contour contour, Polygon other) {
    List<Coordinate> points = new ArrayList<>(contour.points());
    if (contour.closed()) {
      points.add(points.get(0));
    }
    for (int at = 1; at < points.size(); at++) {
      LineString way = Shapes.exactLine(points.get(at - 1), points.get(at));
      if (way.distance(other) < radius - Tolerance.OFF_GRID) {
        return false;
      }
    }
    return true;
  }

  private boolean keepsDirections() {
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      Polygon opening = opening(hole);
      if (!keepsDirections(opening, Offsets.moved(opening, side -> -radius))) {
        return false;
      }
    }
    Polygon whole = filled();
    return keepsDirections(whole, Offsets.moved(whole, this::outward));
  }

  private static boolean keepsDirections(Polygon before, Polygon after) {
    Coordinate[] from = before.getExteriorRing().getCoordinates();
    Coordinate[] to = after.getExteriorRing().getCoordinates();
    for (int at = 1; at < from.length; at++) {
      double along =
          (from[at].x - from[at - 1].x) * (to[at].x - to[at - 1].x)
              + (from[at].y - from[at - 1].y) * (to[at].y - to[at - 1].y);
      if (along <= 0) {
        return false;
      }
    }
    return true;
  }

  /** How many corners of what is kept stay round because no cutter gets into them. */
  public int roundCorners() {
    int count = inward(filled(), -1);
    for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
      count += inward(opening(hole), 1);
    }
    return count;
  }

  /**
   * The corners of a ring against the clock that turn to a side, 1 left, and keep the cutter away.
   */
  private int inward(Polygon ring, int side) {
    Coordinate[] corners = ring.getExteriorRing().getCoordinates();
    int sides = corners.length - 1;
    int count = 0;
    for (int at = 0; at < sides; at++) {
      double half = halfTurn(corners[(at + sides - 1) % sides], corners[at], corners[at + 1]);
      double left = radius * (1 / Trig.cos(half) - 1);
      if (half * side > 0 && left > Tolerance.MARKED) {
        count++;
      }
    }
    return count;
  }

  /** Half of how far a way turns to the left at a corner, degrees. */
  private static double halfTurn(Coordinate before, Coordinate corner, Coordinate after) {
    double firstX = corner.x - before.x;
    double firstY = corner.y - before.y;
    double secondX = after.x - corner.x;
    double secondY = after.y - corner.y;
    double across = firstX * secondY - firstY * secondX;
    double along = firstX * secondX + firstY * secondY;
    return Trig.angle(across, Math.sqrt(across * across + along * along) + along);
  }

  private List<Contour> outer() {
    Polygon whole = filled();
    List<Coordinate> corners = corners(Offsets.moved(whole, this::outward));
    int sides = corners.size();
    int start = firstAfterEdge(whole, sides);
    if (start < 0) {
      return isOnEdge(whole, 0) ? List.of() : List.of(new Contour(corners, true, false));
    }
    List<Contour> chains = new ArrayList<>();
    List<Coordinate> chain = new ArrayList<>();
    for (int step = 0; step <= sides; step++) {
      int side = (start + step) % sides;
      if (step < sides && !isOnEdge(whole, side)) {
        chain.add(corners.get(side));
      } else if (!chain.isEmpty()) {
        chain.add(corners.get(side));
        chains.add(new Contour(chain, false, false));
        chain.clear();
      }
    }
    return chains;
  }

  /** The first free side after one on the sheet's edge; -1 if all are free or none is. */
  private int firstAfterEdge(Polygon whole, int sides) {
    for (int side = 0; side < sides; side++) {
      if (!isOnEdge(whole, side) && isOnEdge(whole, (side + sides - 1) % sides)) {
        return side;
      }
    }
    return -1;
  }

  private double outward(int side) {
    return isOnEdge(filled(), side) ? radius + BEYOND : radius;
  }

  private boolean isOnEdge(Polygon whole, int side) {
    Coordinate from = whole.getExteriorRing().getCoordinateN(side);
    Coordinate to = whole.getExteriorRing().getCoordinateN(side + 1);
    return isOnEdge(from, to, sheet);
  }

  /** Whether a side lies on an edge of a sheet. */
  static boolean isOnEdge(Coordinate from, Coordinate to, Envelope sheet) {
    return both(from.x, to.x, sheet.getMinX())
        || both(from.x, to.x, sheet.getMaxX())
        || both(from.y, to.y, sheet.getMinY())
        || both(from.y, to.y, sheet.getMaxY());
  }

  private static boolean both(double one, double other, double edge) {
    return Math.abs(one - edge) < Tolerance.TOUCH && Math.abs(other - edge) < Tolerance.TOUCH;
  }

  private Polygon filled() {
    return Shapes.polygon(corners(area));
  }

  private Polygon opening(int hole) {
    return Shapes.polygon(corners(area.getInteriorRingN(hole)));
  }

  private static List<Coordinate> corners(Polygon polygon) {
    return corners(polygon.getExteriorRing());
  }

  private static List<Coordinate> corners(LinearRing ring) {
    List<Coordinate> corners = List.of(ring.getCoordinates());
    return corners.subList(0, corners.size() - 1);
  }
}
