package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import plycrag.params.PriceList;

/**
 * What is wanted, and how it is bought.
 *
 * @param want what the wall takes
 * @param deal what the price list offers for it; empty if it offers nothing
 */
public record ShoppingLine(Want want, Optional<Deal> deal) {

  static ShoppingLine of(Want want, PriceList prices) {
    Supply supply = want.supply();
    return new ShoppingLine(
        want,
        supply
            .article()
            .map(article -> prices.of(article, supply.size()))
            .flatMap(offers -> Deal.best(offers, want.amount().all(), supply.length())));
  }

  /** Whether it is bought at all. */
  public boolean isBought() {
    return want.supply().article().isPresent();
  }

  /** How many units are bought. */
  public BigDecimal units() {
    BigDecimal wanted = want.amount().all().setScale(1, RoundingMode.CEILING);
    return isBought() ? deal.map(Deal::units).orElse(wanted) : BigDecimal.ZERO;
  }

  /** In which units; empty for what is not bought. */
  public String soldAs() {
    return isBought() ? deal.map(Deal::soldAs).orElse(want.amount().unit()) : "";
  }

  /** What it costs with tax; empty if it is not bought or its price is missing. */
  public Optional<BigDecimal> cost() {
    return deal.flatMap(Deal::cost);
  }

  /** Whether it must be bought and nobody says for how much. */
  public boolean isPriceMissing() {
    return isBought() && cost().isEmpty();
  }

  /** What must be carried, kg: as the price list says or by size; empty if neither tells. */
  public Optional<Double> mass() {
    Optional<Double> listed = deal.flatMap(Deal::mass).map(BigDecimal::doubleValue);
    double count = want.amount().all().doubleValue();
    return listed.or(() -> want.supply().bulk().map(bulk -> bulk.mass() * count));
  }

  /** m³; 0 where the size does not tell. */
  public double volume() {
    double count = want.amount().all().doubleValue();
    return isBought() ? want.supply().bulk().map(bulk -> bulk.volume() * count).orElse(0.0) : 0;
  }
}
