package plycrag.layout.nest;

/**
 * Equal sheets that can be had.
 *
 * @param length along the grain of every other kind's length, mm
 * @param width across it, mm
 * @param price of one, in whole units of any one kind; 0 for what is at hand
 * @param count how many there are; {@link Integer#MAX_VALUE} for any number
 */
public record SheetKind(double length, double width, long price, int count) {
  /** Whether it need not be bought. */
  public boolean isAtHand() {
    return price == 0;
  }
}
