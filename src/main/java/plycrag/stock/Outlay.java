package plycrag.stock;

import java.math.BigDecimal;

/** What a cutting plan spends, and what no plan falls below. */
public sealed interface Outlay {

  /** Whether no plan spends less. */
  boolean isLeast();

  /**
   * Counted by length, where not every length has a price.
   *
   * @param bought of all bought sticks, mm
   * @param least no plan buys less, mm; lengths are counted to the tenth of a millimetre or, in
   *     inch files, to 1/128 in, in the saw's favour
   */
  record OfLength(double bought, double least) implements Outlay {
    @Override
    public boolean isLeast() {
      return least == bought;
    }
  }

  /**
   * Counted by price.
   *
   * @param cost of all bought sticks, each with tax and rounded to the hundredth
   * @param least no plan costs less
   * @param currency of both
   */
  record OfMoney(BigDecimal cost, BigDecimal least, String currency) implements Outlay {
    @Override
    public boolean isLeast() {
      return least.compareTo(cost) == 0;
    }
  }
}
