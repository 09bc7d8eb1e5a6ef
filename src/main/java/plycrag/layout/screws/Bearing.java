package plycrag.layout.screws;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.frame.Member;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.Piece;

/**
 * Where a piece lies on a member.
 *
 * @param piece the piece
 * @param core what goes through the piece may not leave it, in (u, v)
 * @param member the member
 * @param area what the piece's back and the member share
 */
record Bearing(Piece piece, Polygon core, Member member, Polygon area) {
  /** A contact narrower than this is no bearing, mm. */
  private static final double LEAST = 5;

  /** The coarsest marking grid, a sixteenth of an inch, mm. */
  private static final double READING = 25.4 / 16;

  /** Where a piece bears on a member. */
  static List<Bearing> of(Piece piece, Polygon core, Member member) {
    return Shapes.sharedAreas(piece.back(), member.footprint()).stream()
        .map(area -> new Bearing(piece, core, member, area))
        .filter(bearing -> bearing.along().size() >= LEAST && bearing.beside().size() >= LEAST)
        .toList();
  }

  /**
   * Whether square timber along the side of this one, which leans or lies in a fold, takes its
   * place.
   */
  boolean isRelievedBy(Bearing other) {
    return member.fixity() == Fixity.EDGE
        && other.member().fixity() == Fixity.EDGE
        && other.direction().isParallel(direction())
        && isBeside(other);
  }

  /** Whether another member lies along the side of this one, but for what a tape cannot read. */
  private boolean isBeside(Bearing other) {
    Span along = direction().span(other.area());
    boolean shares = along.low() < along().high() && along().low() < along.high();
    return shares
        && !member.mark().equals(other.member().mark())
        && member.footprint().distance(other.member().footprint()) <= READING;
  }

  /** The way the member runs. */
  Direction direction() {
    return member.direction();
  }

  /** Where it lies along the member, mm. */
  Span along() {
    return direction().span(area);
  }

  /** Whether nothing but the piece lies on the member, end to end. */
  boolean takesWholeMember() {
    Span whole = direction().span(member.footprint());
    return along().size() > whole.size() - Tolerance.TOUCH;
  }

  /** Where it lies across the member, mm. */
  Span beside() {
    return direction().across().span(area);
  }

  /**
   * Whether the member runs along an edge of the piece.
   *
   * @param overhang how far the edge may stand out beyond it, mm
   */
  boolean isAtEdge(double overhang) {
    Span timber = direction().across().span(member.footprint());
    return Shapes.edges(piece.back()).stream()
        .filter(this::isAlong)
        .mapToDouble(edge -> direction().across().along(edge.getCoordinateN(0)))
        .anyMatch(
            place ->
                Tolerance.atMost(timber.low(), place + overhang)
                    && Tolerance.atLeast(timber.high(), place - overhang));
  }

  /** The edges of the core that run the way of the member, beside the bearing. */
  List<LineString> coreEdgesAlong() {
    return Shapes.edges(core).stream().filter(this::isAlong).toList();
  }

  /** The edges of the core that do not run its way. */
  List<LineString> coreEdgesAcross() {
    return Shapes.edges(core).stream()
        .filter(edge -> !Direction.of(edge).isParallel(direction()))
        .toList();
  }

  private boolean isAlong(LineString edge) {
    Span span = direction().span(edge);
    return Direction.of(edge).isParallel(direction())
        && span.low() < along().high()
        && along().low() < span.high();
  }
}
