package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Direction;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;

/**
 * How one end of a member is cut, as a mitre saw is set: the saw turned on its table, the member's
 * side against the sheet lying on it, and the blade tilted.
 *
 * @param mitre how far the cut slants across that side from square, degrees; above zero it goes
 *     further along the upper or right edge
 * @param tilt how far it slants from square to that side, degrees; above zero the member is longer
 *     behind
 * @param isPointed whether the end has two cuts, of which this is the longer
 */
public record EndCut(double mitre, double tilt, boolean isPointed) {
  /** A side of the footprint that ends it, corner numbers in its ring. */
  private record End(int from, int to, double length) {}

  static EndCut of(Member member, boolean high) {
    Coordinate[] near = member.footprint().getExteriorRing().getCoordinates();
    Coordinate[] far = member.far().getExteriorRing().getCoordinates();
    List<End> ends = ends(near, member.direction(), high);
    End end = ends.stream().max(Comparator.comparingDouble(End::length)).orElseThrow();
    Direction along = member.direction();
    Direction across = along.across();
    double run = along.along(near[end.to]) - along.along(near[end.from]);
    double rise = across.along(near[end.to]) - across.along(near[end.from]);
    double mitre = rise < 0 ? Trig.angle(-run, -rise) : Trig.angle(run, rise);
    double ahead = ahead(near, far, end, along, across);
    double longer = high ? ahead : -ahead;
    double sharp = ends.size() > 1 ? ends.stream().mapToDouble(End::length).min().orElse(0) : 0;
    return new EndCut(
        mitre + 0.0, Trig.angle(longer * Trig.cos(mitre), member.depth()) + 0.0, sharp > 1);
  }

  /** How far the cut has moved along the member at its back, at the same place across. */
  private static double ahead(
      Coordinate[] near, Coordinate[] far, End end, Direction along, Direction across) {
    double beside = across.along(near[end.from]);
    double from = across.along(far[end.from]);
    double to = across.along(far[end.to]);
    double part = Math.abs(to - from) < Tolerance.TOUCH ? 0 : (beside - from) / (to - from);
    double place =
        along.along(far[end.from]) + part * (along.along(far[end.to]) - along.along(far[end.from]));
    double ahead = place - along.along(near[end.from]);
    return Math.abs(ahead) < Tolerance.OFF_GRID ? 0 : ahead;
  }

  /**
   * The sides that are not along the member, at one end of it. A ring runs counter-clockwise, so
   * that its sides at the two ends run across the member in opposite ways.
   */
  private static List<End> ends(Coordinate[] ring, Direction along, boolean high) {
    List<End> ends = new ArrayList<>();
    Direction across = along.across();
    boolean risesHigh = along.u() * across.v() - along.v() * across.u() > 0;
    for (int at = 1; at < ring.length; at++) {
      double run = Math.abs(along.along(ring[at]) - along.along(ring[at - 1]));
      double rise = across.along(ring[at]) - across.along(ring[at - 1]);
      double breadth = Math.abs(rise);
      boolean isSide =
          breadth < Tolerance.TOUCH
              || (breadth < 0.5 && breadth < 2 * Tolerance.ALONG_TIMBER * run);
      if (!isSide && rise > 0 == (risesHigh == high)) {
        ends.add(new End(at - 1, at, Math.sqrt(run * run + rise * rise)));
      }
    }
    return ends;
  }
}
