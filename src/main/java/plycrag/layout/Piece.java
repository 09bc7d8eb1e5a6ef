package plycrag.layout;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * What is cut from one sheet.
 *
 * @param mark {@code P1}, {@code P2}, … from the floor up, left to right
 * @param outline its front face in the facet's (u, v)
 */
public record Piece(String mark, Polygon outline) {

  /** The smallest box around it. */
  public Envelope box() {
    return outline.getEnvelopeInternal();
  }
}
