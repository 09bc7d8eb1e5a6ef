package plycrag.layout.screws;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import plycrag.layout.pattern.Screw;

/**
 * A row of screws along a member, in one piece.
 *
 * @param piece the piece's mark
 * @param member the member's mark
 * @param line from the first screw to the last, in (u, v)
 * @param screws in order along the line
 */
public record FastenerLine(String piece, String member, LineString line, List<Screw> screws) {
  /** Copies the screws. */
  public FastenerLine {
    screws = List.copyOf(screws);
  }
}
