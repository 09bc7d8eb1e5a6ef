package plycrag.layout;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Solid;
import plycrag.geometry.Trig;

/**
 * A length of timber behind the sheets. Its ends and, in a plate at a fold, its sides may slant
 * away from the sheets.
 *
 * @param mark its role's letters and a number, {@code ST1}, in reading order
 * @param role what it is for
 * @param hold what keeps it where it is
 * @param footprint what touches the plane of the sheets' back, in (u, v)
 * @param far the same at its back; equal to the footprint where everything is square
 * @param depth how far it reaches behind the sheets' back, mm
 */
public record Member(
    String mark, Role role, Hold hold, Polygon footprint, Polygon far, double depth) {

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
    return rip() == 0;
  }

  /**
   * Its body in the facet's (u, v, w), w behind the climbing face.
   *
   * @param thickness of the sheets before it, mm
   */
  public Solid body(double thickness) {
    return Solid.between(footprint, thickness, far, thickness + depth);
  }

  /** The way it runs. */
  public Axis axis() {
    return role.axis();
  }

  /** Its length over the long points, mm. */
  public double length() {
    return axis().size(shadow());
  }

  /** How far its lower or left end slants from square, degrees; above zero it is longer behind. */
  public double lowEnd() {
    return Trig.angle(axis().low(box()) - axis().low(far.getEnvelopeInternal()), depth);
  }

  /** How far its upper or right end does. */
  public double highEnd() {
    return Trig.angle(axis().high(far.getEnvelopeInternal()) - axis().high(box()), depth);
  }

  /**
   * How far its sides slant from square to the sheet, degrees: the angle of the rip that lets it
   * lie flat against the sheet. Above zero they slant up, away from it.
   */
  public double rip() {
    Axis across = axis().other();
    return Trig.angle(across.low(far.getEnvelopeInternal()) - across.low(box()), depth);
  }

  /** The side against the sheet, mm. */
  public double breadth() {
    return axis().other().size(box());
  }

  /**
   * Where it lies at a depth.
   *
   * @param into behind the sheets' back, mm
   */
  public Envelope section(double into) {
    double part = into / depth;
    Envelope back = far.getEnvelopeInternal();
    return new Envelope(
        between(box().getMinX(), back.getMinX(), part),
        between(box().getMaxX(), back.getMaxX(), part),
        between(box().getMinY(), back.getMinY(), part),
        between(box().getMaxY(), back.getMaxY(), part));
  }

  private static double between(double near, double far, double part) {
    return near == far ? near : near + (far - near) * part;
  }
}
