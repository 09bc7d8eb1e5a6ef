package plycrag.layout;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * A length of timber behind the sheets, with square ends.
 *
 * @param mark its role's letters and a number, {@code ST1}, in reading order
 * @param role what it is for
 * @param hold what keeps it where it is
 * @param footprint what touches the plane of the sheets' back, in (u, v)
 * @param depth how far it reaches behind that plane, mm
 */
public record Member(String mark, Role role, Hold hold, Polygon footprint, double depth) {

  /** The smallest box around its footprint. */
  public Envelope box() {
    return footprint.getEnvelopeInternal();
  }

  /** The way it runs. */
  public Axis axis() {
    return role.axis();
  }

  /** Its length, mm. */
  public double length() {
    return axis().size(box());
  }

  /** The side against the sheet, mm. */
  public double breadth() {
    return axis().other().size(box());
  }
}
