package plycrag.stock;

import java.math.BigDecimal;

/**
 * Something that a wall takes.
 *
 * @param group under which lists show it
 * @param what in words
 * @param size in words, empty if it has none
 * @param amount how much
 * @param sourcing where it comes from
 * @param note what to look for when buying it, empty for nothing
 */
public record Need(
    String group, String what, String size, Amount amount, Sourcing sourcing, String note) {

  /**
   * How much.
   *
   * @param quantity that the wall takes
   * @param unit in which it is counted, in words
   * @param spare bought beside it
   */
  public record Amount(BigDecimal quantity, String unit, int spare) {
    /** Pieces without a spare. */
    static Amount pieces(int count) {
      return new Amount(BigDecimal.valueOf(count), "piece", 0);
    }

    /** Pieces with 5 % more, a whole piece at least. */
    static Amount withSpare(int count) {
      return new Amount(BigDecimal.valueOf(count), "piece", (count + 19) / 20);
    }

    /** Spare included. */
    public BigDecimal all() {
      return quantity.add(BigDecimal.valueOf(spare));
    }
  }

  Need noting(String other) {
    return new Need(group, what, size, amount, sourcing, other);
  }

  /** The same, beyond what the price list's merchant has. */
  Need lacking() {
    return new Need(group, what + ", beyond what is available", size, amount, sourcing, note);
  }

  /** As much of it. */
  Need taking(BigDecimal quantity, int spare) {
    return new Need(group, what, size, new Amount(quantity, amount.unit(), spare), sourcing, note);
  }
}
