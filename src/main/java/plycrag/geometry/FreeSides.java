package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * The sides of an area's outer edge that do not lie on the edges of the sheet that it is cut from:
 * only these are cut.
 */
public final class FreeSides {
  private FreeSides() {}

  /**
   * Sides that follow each other, the area to their left.
   *
   * @param points in order; where it is closed the first is not repeated
   * @param closed whether it is all of the edge
   */
  public record Chain(List<Coordinate> points, boolean closed) {
    /** Copies the points. */
    public Chain {
      points = List.copyOf(points);
    }
  }

  /**
   * The chains; none where an area fills its sheet.
   *
   * @param area ordered as {@link Shapes#areas} does, against the clock
   */
  public static List<Chain> of(Polygon area, Envelope sheet) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    int sides = ring.length - 1;
    int start = firstAfterEdge(ring, sheet);
    if (start < 0) {
      boolean free = !Contours.isOnEdge(ring[0], ring[1], sheet);
      return free ? List.of(new Chain(List.of(ring).subList(0, sides), true)) : List.of();
    }
    List<Chain> chains = new ArrayList<>();
    List<Coordinate> chain = new ArrayList<>();
    for (int step = 0; step < sides; step++) {
      int side = (start + step) % sides;
      if (!Contours.isOnEdge(ring[side], ring[side + 1], sheet)) {
        chain.add(ring[side]);
        Coordinate next = ring[side + 1];
        if (Contours.isOnEdge(next, ring[(side + 1) % sides + 1], sheet)) {
          chain.add(next);
          chains.add(new Chain(chain, false));
          chain.clear();
        }
      }
    }
    return chains;
  }

  /** The first free side after one on the sheet's edge; -1 if all are free or none is. */
  private static int firstAfterEdge(Coordinate[] ring, Envelope sheet) {
    int sides = ring.length - 1;
    for (int side = 0; side < sides; side++) {
      int before = (side + sides - 1) % sides;
      if (!Contours.isOnEdge(ring[side], ring[side + 1], sheet)
          && Contours.isOnEdge(ring[before], ring[before + 1], sheet)) {
        return side;
      }
    }
    return -1;
  }
}
