package plycrag.layout.pattern;

import org.locationtech.jts.geom.Point;

/**
 * A screw through a sheet into the frame.
 *
 * @param mark what a tape reads at its centre, after the facet's name
 * @param piece the mark of the piece it holds
 * @param member the mark of the member it bites
 * @param centre in (u, v), on the marking grid
 */
public record Screw(String mark, String piece, String member, Point centre) {

  /** The same screw under another mark. */
  public Screw withMark(String other) {
    return new Screw(other, piece, member, centre);
  }
}
