package plycrag.check.clearance;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Distances;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.frame.Member;

/**
 * How much of the rim of an opening stands further from timber than it may, told from places a
 * millimetre apart along it.
 *
 * @param length of all that does, mm
 * @param worst the greatest distance, mm
 * @param place where that is
 */
record BareRim(double length, double worst, Point place) {
  private static final double STEP = 1;

  /**
   * What stands too far from timber of some edges of one piece; nothing if none does.
   *
   * @param most how far an edge may stand from timber, mm
   */
  static Optional<BareRim> of(List<LineString> edges, List<Member> members, double most) {
    double length = 0;
    double worst = 0;
    Point place = null;
    for (LineString edge : edges) {
      int steps = (int) Tolerance.wholeUp(edge.getLength() / STEP);
      for (int step = 0; step < steps; step++) {
        Point at = at(edge, (step + 0.5) / steps);
        double away = away(at, members);
        if (away > most) {
          length += edge.getLength() / steps;
          place = away > worst ? at : place;
          worst = Math.max(worst, away);
        }
      }
    }
    return place == null ? Optional.empty() : Optional.of(new BareRim(length, worst, place));
  }

  private static Point at(LineString edge, double part) {
    Coordinate from = edge.getCoordinateN(0);
    Coordinate to = edge.getCoordinateN(1);
    return Shapes.point(from.x + part * (to.x - from.x), from.y + part * (to.y - from.y));
  }

  /** How far a place stands from the nearest timber, mm. */
  static double away(Point place, List<Member> members) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Member member : members) {
      if (member.box().distance(place.getEnvelopeInternal()) < nearest) {
        nearest = Math.min(nearest, Distances.from(place, member.footprint()));
      }
    }
    return nearest;
  }
}
