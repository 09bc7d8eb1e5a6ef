package plycrag.layout.pattern;

import org.locationtech.jts.geom.Point;

/**
 * A threaded insert.
 *
 * @param mark what a tape reads at its centre, after the facet's name
 * @param centre in (u, v), on the marking grid
 * @param column its column, from 1 at the left; 0 of a scattered one
 * @param row its row, from 1 at the bottom; 0 of a scattered one
 * @param counted in what its column and row are counted, {@code zone feet}, where the facet has
 *     several patterns; else empty
 */
public record Insert(String mark, Point centre, int column, int row, String counted) {

  /** An insert without a mark, on a facet of one pattern. */
  Insert(Point centre, int column, int row) {
    this("", centre, column, row, "");
  }

  /** The same insert under another mark. */
  public Insert withMark(String other) {
    return new Insert(other, centre, column, row, counted);
  }

  /** The same one of several patterns. */
  Insert countedIn(String pattern) {
    return new Insert(mark, centre, column, row, pattern);
  }

  /** {@code column 3}, {@code column 3 of zone feet}. */
  String columnName() {
    return "column " + column + of();
  }

  /** {@code row 3}, {@code row 3 of zone feet}. */
  String rowName() {
    return "row " + row + of();
  }

  private String of() {
    return counted.isEmpty() ? "" : " of " + counted;
  }
}
