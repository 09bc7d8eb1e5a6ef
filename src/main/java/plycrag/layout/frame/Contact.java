package plycrag.layout.frame;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import plycrag.geometry.Direction;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * Where two members of one facet touch: the longest stretch that a side of one footprint shares
 * with a side of the other.
 *
 * @param stretch in (u, v)
 * @param endsFirst whether it is an end of the first one
 * @param endsSecond whether it is an end of the second one
 */
record Contact(LineString stretch, boolean endsFirst, boolean endsSecond) {
  /** A contact shorter than this is a corner, mm. */
  static final double LEAST = 5;

  static Optional<Contact> of(Member first, Member second) {
    return Shapes.outerEdges(first.footprint()).stream()
        .flatMap(
            edge ->
                Shapes.outerEdges(second.footprint()).stream()
                    .flatMap(
                        other ->
                            shared(edge, other).stream()
                                .map(
                                    stretch ->
                                        new Contact(
                                            stretch, isEnd(edge, first), isEnd(other, second)))))
        .max(Comparator.comparingDouble(contact -> contact.stretch().getLength()));
  }

  private static boolean isEnd(LineString edge, Member member) {
    return !Direction.of(edge).isParallel(member.direction());
  }

  /** What of one edge lies on another. */
  static Optional<LineString> shared(LineString edge, LineString other) {
    LineSegment line = segment(edge);
    LineSegment beside = segment(other);
    if (line.distancePerpendicular(beside.p0) > Tolerance.TOUCH
        || line.distancePerpendicular(beside.p1) > Tolerance.TOUCH) {
      return Optional.empty();
    }
    double one = line.projectionFactor(beside.p0);
    double two = line.projectionFactor(beside.p1);
    double from = Math.max(0, Math.min(one, two));
    double to = Math.min(1, Math.max(one, two));
    return (to - from) * line.getLength() > LEAST
        ? Optional.of(
            Shapes.line(
                line.pointAlong(from).x,
                line.pointAlong(from).y,
                line.pointAlong(to).x,
                line.pointAlong(to).y))
        : Optional.empty();
  }

  static List<LineString> edgesOn(Member member, LineString side) {
    return Shapes.outerEdges(member.footprint()).stream()
        .flatMap(edge -> shared(edge, side).stream())
        .toList();
  }

  private static LineSegment segment(LineString edge) {
    return new LineSegment(edge.getCoordinateN(0), edge.getCoordinateN(1));
  }
}
