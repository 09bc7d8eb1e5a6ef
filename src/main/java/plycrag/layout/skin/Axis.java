package plycrag.layout.skin;

import org.locationtech.jts.geom.Envelope;

/** The two ways along which things on a facet run. */
public enum Axis {
  /** Along u. */
  ACROSS,
  /** Along v. */
  UP;

  /** The other one. */
  public Axis other() {
    return this == ACROSS ? UP : ACROSS;
  }

  /** Where a box begins along this axis, mm. */
  public double low(Envelope box) {
    return this == ACROSS ? box.getMinX() : box.getMinY();
  }

  /** Where a box ends along this axis, mm. */
  public double high(Envelope box) {
    return this == ACROSS ? box.getMaxX() : box.getMaxY();
  }

  /** The middle of a box along this axis, mm. */
  public double middle(Envelope box) {
    return (low(box) + high(box)) / 2;
  }

  /** The size of a box along this axis, mm. */
  public double size(Envelope box) {
    return high(box) - low(box);
  }
}
