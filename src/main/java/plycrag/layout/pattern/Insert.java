package plycrag.layout.pattern;

import org.locationtech.jts.geom.Point;

/**
 * A threaded insert.
 *
 * @param mark what a tape reads at its centre, after the facet's name
 * @param centre in (u, v), on the marking grid
 * @param column its column, from 1 at the left; 0 of a scattered one
 * @param row its row, from 1 at the bottom; 0 of a scattered one
 */
public record Insert(String mark, Point centre, int column, int row) {

  /** The same insert under another mark. */
  public Insert withMark(String other) {
    return new Insert(other, centre, column, row);
  }
}
