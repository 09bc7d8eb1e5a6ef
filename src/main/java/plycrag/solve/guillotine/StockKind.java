package plycrag.solve.guillotine;

/**
 * Equal sheets that can be had. A piece at hand is a kind with price 0 and a limit.
 *
 * @param name what it is called in the result
 * @param width along x, mm
 * @param height along y, mm
 * @param price of one sheet in whole units of the caller's, 0 or more
 * @param limit the most sheets there are, 0 or more; {@link #UNLIMITED} if any number can be had
 */
public record StockKind(String name, double width, double height, long price, int limit) {
  /** A limit that no plan reaches. */
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /** Refuses sizes that are not above zero, and prices and limits below it. */
  public StockKind {
    Sizes.requirePositive(width, height);
    if (price < 0 || limit < 0) {
      throw new IllegalArgumentException("price or limit below 0");
    }
  }
}
