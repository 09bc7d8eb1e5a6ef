package plycrag.solve.nest;

import java.util.List;

/**
 * A sheet as bought, with the blanks to be cut from it, as it lies on the machine.
 *
 * @param mark {@code S1}, {@code S2}, …
 * @param kind what it was laid on
 * @param upright whether its length runs along y, or else along x
 * @param blanks in the order of their marks
 * @param cutting how it comes apart
 */
public record StockSheet(
    String mark, SheetKind kind, boolean upright, List<LaidBlank> blanks, SheetCutting cutting) {

  /** Keeps a copy. */
  public StockSheet {
    blanks = List.copyOf(blanks);
  }

  /** Along x, mm. */
  public double width() {
    return upright ? kind.width() : kind.length();
  }

  /** Along y, mm. */
  public double height() {
    return upright ? kind.length() : kind.width();
  }
}
