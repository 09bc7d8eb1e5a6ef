package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plycrag.prices.Offer;
import plycrag.prices.SaleUnit;

/**
 * What is bought by one offer.
 *
 * @param offer the line of the price list
 * @param units how many pieces, metres or packs
 */
record Purchase(Offer offer, BigDecimal units) {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final int CENTS = 2;

  /** The cheapest purchase; where no offer has a price, the first of the fewest units. */
  static Optional<Purchase> best(List<Offer> offers, BigDecimal quantity, double length) {
    Comparator<Purchase> byCost =
        Comparator.comparing(
            purchase -> purchase.cost(),
            Comparator.comparing((Optional<BigDecimal> cost) -> cost.isEmpty())
                .thenComparing(cost -> cost.orElse(BigDecimal.ZERO)));
    return offers.stream()
        .map(offer -> new Purchase(offer, units(offer, quantity, length)))
        .min(byCost.thenComparing(Purchase::units));
  }

  private static BigDecimal units(Offer offer, BigDecimal quantity, double length) {
    return switch (offer.unit()) {
      case PIECE -> quantity.setScale(0, RoundingMode.CEILING);
      case METRE -> quantity.multiply(BigDecimal.valueOf(length).movePointLeft(3));
      case PACK -> quantity.divide(offer.contents(), 0, RoundingMode.CEILING);
    };
  }

  /** Before tax, rounded to the hundredth, halves up. */
  public Optional<BigDecimal> net() {
    return offer.price().map(price -> price.multiply(units).setScale(CENTS, RoundingMode.HALF_UP));
  }

  /** With tax on the rounded sum, itself rounded to the hundredth, halves up. */
  public Optional<BigDecimal> cost() {
    return net().map(net -> net.add(tax(net)));
  }

  private BigDecimal tax(BigDecimal net) {
    return net.multiply(offer.tax()).divide(HUNDRED, CENTS, RoundingMode.HALF_UP);
  }

  /** kg, if the list says what a unit weighs. */
  public Optional<BigDecimal> mass() {
    return offer.mass().map(mass -> mass.multiply(units));
  }

  /** {@code piece}, {@code metre}, {@code pack of 200}. */
  public String soldAs() {
    String word = offer.unit().word();
    return offer.unit() == SaleUnit.PACK
        ? word + " of " + offer.contents().stripTrailingZeros().toPlainString()
        : word;
  }
}
