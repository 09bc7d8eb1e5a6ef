package plycrag.solve.nest;

import plycrag.solve.guillotine.StockKind;

/**
 * Equal sheets that can be had.
 *
 * @param length along the grain of every other kind's length, mm
 * @param width across it, mm
 * @param price of one, in whole units of any one kind; 0 for what is at hand
 * @param count how many there are; {@link #UNLIMITED} for any number
 */
public record SheetKind(double length, double width, long price, int count) {
  /** As many as are wanted. */
  public static final int UNLIMITED = StockKind.UNLIMITED;

  /** Whether it need not be bought. */
  public boolean isAtHand() {
    return price == 0;
  }
}
