package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Direction;
import plycrag.geometry.Direction.Span;
import plycrag.geometry.Offsets;
import plycrag.geometry.Shapes;
import plycrag.geometry.Solid;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Trig;
import plycrag.layout.skin.Fixity;

/**
 * A length of timber behind the sheets, with straight sides. Its ends and, along a fold, its sides
 * may slant away from the sheets.
 *
 * @param mark its role's letters and a number, {@code ST1}, in reading order
 * @param role what it is for
 * @param fixity what keeps it where it is
 * @param direction the way it runs
 * @param footprint what touches the plane of the sheets' back, in (u, v); convex
 * @param far the same at its back, corner for corner; equal to the footprint where everything is
 *     square
 * @param depth how far it reaches behind the sheets' back, mm
 */
public record Member(
    String mark,
    MemberRole role,
    Fixity fixity,
    Direction direction,
    Polygon footprint,
    Polygon far,
    double depth) {
  /** Of a ring, the first one repeated. */
  private static final int FOUR_CORNERS = 5;

  /** The smallest box around its footprint. */
  public Envelope box() {
    return footprint.getEnvelopeInternal();
  }

  /** The smallest box around it, seen square to the face. */
  public Envelope shadow() {
    Envelope box = box();
    box.expandToInclude(far.getEnvelopeInternal());
    return box;
  }

  /** Whether all its sides and ends are square to the sheet. */
  public boolean isSquare() {
    return footprint.equalsExact(far);
  }

  /** Whether its sides, if not its ends, are square to the sheet. */
  public boolean hasSquareSides() {
    return Math.abs(rip()) < Tolerance.SQUARE;
  }

  /**
   * Its body in the facet's (u, v, w), w behind the climbing face.
   *
   * @param thickness of the sheets before it, mm
   */
  public Solid body(double thickness) {
    return Solid.between(footprint, thickness, far, thickness + depth);
  }

  /** Whether it runs straight up the slope or straight across. */
  public boolean isUpOrLevel() {
    return direction.isSquare();
  }

  /** Its length over the long points, mm. */
  public double length() {
    Span near = direction.span(footprint);
    Span back = direction.span(far);
    return Math.max(near.high(), back.high()) - Math.min(near.low(), back.low());
  }

  /** How its lower or left end is cut. */
  public EndCut lowEnd() {
    return EndCut.of(this, false);
  }

  /** How its upper or right end is cut. */
  public EndCut highEnd() {
    return EndCut.of(this, true);
  }

  /**
   * How far its sides slant from square to the sheet, degrees: the angle of the rip that lets it
   * lie flat against the sheet. Above zero they slant up, or to the right, away from it.
   */
  public double rip() {
    Direction across = direction.across();
    return Trig.angle(across.span(far).low() - across.span(footprint).low(), depth);
  }

  /** The side against the sheet, mm. */
  public double breadth() {
    return direction.across().span(footprint).size();
  }

  /**
   * Where it lies at a depth, corner for corner.
   *
   * @param into behind the sheets' back, mm
   */
  public Polygon section(double into) {
    return isSquare() ? footprint : Offsets.between(footprint, far, into / depth);
  }

  /**
   * The same, shorter at one end; none where it has not two long sides from one end to the other,
   * or is too short.
   */
  Optional<Member> without(EndLoss loss) {
    boolean isSimple = footprint.getExteriorRing().getNumPoints() == FOUR_CORNERS;
    return isSimple && length() > 2 * loss.most() + breadth()
        ? Optional.of(
            new Member(
                mark,
                role,
                fixity,
                direction,
                without(footprint, loss, false),
                without(far, loss, true),
                depth))
        : Optional.empty();
  }

  private Polygon without(Polygon face, EndLoss loss, boolean isBack) {
    Coordinate[] ring = face.getExteriorRing().getCoordinates();
    Direction across = direction.across();
    double middle = direction.along(face.getCentroid());
    double beside = across.along(face.getCentroid());
    List<Coordinate> corners = new ArrayList<>();
    for (int at = 0; at + 1 < ring.length; at++) {
      boolean moves = direction.along(ring[at]) > middle == loss.high();
      double lost = moves ? loss.at(across.along(ring[at]) > beside, isBack) : 0;
      double step = loss.high() ? -lost : lost;
      corners.add(
          new Coordinate(ring[at].x + step * direction.u(), ring[at].y + step * direction.v()));
    }
    return Shapes.ring(corners);
  }

  /** Whether uprights end on it: a plate, or a rake that runs further than it rises. */
  public boolean endsUprights() {
    boolean isAlong = role == MemberRole.PLATE || role == MemberRole.RAKE;
    return isAlong && Math.abs(direction.u()) > Math.abs(direction.v());
  }
}
