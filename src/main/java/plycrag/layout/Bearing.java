package plycrag.layout;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/**
 * Where a piece lies on a member.
 *
 * @param piece the piece
 * @param member the member
 * @param face what goes through the piece may not leave, in (u, v)
 * @param box what the piece's back and the member share
 */
record Bearing(Piece piece, Member member, Envelope face, Envelope box) {
  /** A contact narrower than this is no bearing, mm. */
  private static final double LEAST = 5;

  private static final double TOLERANCE = 1e-6;

  static Optional<Bearing> of(Piece piece, Member member) {
    Envelope box = piece.back().getEnvelopeInternal().intersection(member.box());
    boolean bears = !box.isNull() && box.getWidth() >= LEAST && box.getHeight() >= LEAST;
    return bears
        ? Optional.of(new Bearing(piece, member, piece.core().getEnvelopeInternal(), box))
        : Optional.empty();
  }

  /** The way the member runs. */
  Axis axis() {
    return member.axis();
  }

  /**
   * Whether the member runs along an edge of the piece.
   *
   * @param overhang how far the edge may stand out beyond it, mm
   */
  boolean isAtEdge(double overhang) {
    Axis across = axis().other();
    Envelope back = piece.back().getEnvelopeInternal();
    return across.low(box) - across.low(back) < overhang + TOLERANCE
        || across.high(back) - across.high(box) < overhang + TOLERANCE;
  }
}
