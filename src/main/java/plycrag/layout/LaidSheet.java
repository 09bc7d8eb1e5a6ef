package plycrag.layout;

import java.util.List;
import plycrag.layout.nest.StockSheet;

/**
 * A stock sheet with the piece and the holes to be made in it.
 *
 * @param stock the sheet as it lies on the machine
 * @param piece what is cut from it
 * @param facet the facet that the piece belongs to, by name
 * @param holes row by row from the bottom, left to right
 */
public record LaidSheet(StockSheet stock, Piece piece, String facet, List<MachinedHole> holes) {
  /** Copies the holes. */
  public LaidSheet {
    holes = List.copyOf(holes);
  }

  /** The sheet's mark. */
  public String mark() {
    return stock.mark();
  }
}
