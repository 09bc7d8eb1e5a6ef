package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.prices.Offer;
import plycrag.prices.PriceList;

/**
 * What is wanted, and how it is bought.
 *
 * @param want what the wall takes
 * @param deal what the price list offers for it; empty if it offers nothing
 */
public record ShoppingLine(Need want, Optional<Purchase> deal) {

  /** The lines of a want: one for each kind of pack that the cheapest deal takes. */
  static List<ShoppingLine> of(Need want, PriceList prices) {
    Sourcing supply = want.supply();
    List<Offer> offers =
        supply.article().map(article -> prices.of(article, supply.size())).orElse(List.of());
    ScarceOffer told = ScarceOffer.of(offers);
    if (told.scarce().isPresent()) {
      return scarce(want, told.scarce().get(), told.others());
    }
    return enough(want, offers);
  }

  private static List<ShoppingLine> enough(Need want, List<Offer> offers) {
    BigDecimal all = want.amount().all();
    Sourcing supply = want.supply();
    return Purchase.best(offers, all, supply.length())
        .map(alone -> lines(want, PackMix.of(alone, offers, all)))
        .orElse(List.of(new ShoppingLine(want, Optional.empty())));
  }

  /** As many as there are where that is the cheapest, the rest from others or from elsewhere. */
  private static List<ShoppingLine> scarce(Need want, Offer scarce, List<Offer> others) {
    BigDecimal all = want.amount().all();
    List<Offer> each = Stream.concat(Stream.of(scarce), others.stream()).toList();
    boolean isCheapest =
        Purchase.best(each, BigDecimal.ONE, want.supply().length())
            .map(deal -> deal.offer().equals(scarce))
            .orElseThrow();
    BigDecimal most = BigDecimal.valueOf(isCheapest ? scarce.available().orElseThrow() : 0);
    BigDecimal taken = all.min(most);
    BigDecimal rest = all.subtract(taken);
    List<ShoppingLine> lines = new ArrayList<>();
    if (taken.signum() > 0) {
      lines.add(new ShoppingLine(want.taking(taken, 0), Optional.of(new Purchase(scarce, taken))));
    }
    if (rest.signum() > 0 && others.isEmpty()) {
      lines.add(new ShoppingLine(want.taking(rest, 0).lacking(), Optional.empty()));
    } else if (rest.signum() > 0) {
      lines.addAll(enough(want.taking(rest, 0), others));
    }
    return lines;
  }

  /** What each deal's packs hold, the last of them what is still wanted. */
  private static List<ShoppingLine> lines(Need want, List<Purchase> deals) {
    List<ShoppingLine> lines = new ArrayList<>();
    Need rest = want;
    for (Purchase deal : deals.subList(0, deals.size() - 1)) {
      BigDecimal holds = deal.units().multiply(deal.offer().contents());
      BigDecimal part = rest.amount().quantity().min(holds);
      int spare = Math.min(rest.amount().spare(), holds.subtract(part).intValue());
      lines.add(new ShoppingLine(rest.taking(part, spare), Optional.of(deal)));
      Need.Amount left = rest.amount();
      rest = rest.taking(left.quantity().subtract(part), left.spare() - spare);
    }
    lines.add(new ShoppingLine(rest, Optional.of(deals.get(deals.size() - 1))));
    return lines;
  }

  /** Whether it is bought at all. */
  public boolean isBought() {
    return want.supply().article().isPresent();
  }

  /** How many units are bought. */
  public BigDecimal units() {
    BigDecimal wanted = want.amount().all().setScale(1, RoundingMode.CEILING);
    return isBought() ? deal.map(Purchase::units).orElse(wanted) : BigDecimal.ZERO;
  }

  /** In which units; empty for what is not bought. */
  public String soldAs() {
    return isBought() ? deal.map(Purchase::soldAs).orElse(want.amount().unit()) : "";
  }

  /** What it costs with tax; empty if it is not bought or its price is missing. */
  public Optional<BigDecimal> cost() {
    return deal.flatMap(Purchase::cost);
  }

  /** Whether it must be bought and nobody says for how much. */
  public boolean isPriceMissing() {
    return isBought() && cost().isEmpty();
  }

  /** What must be carried, kg: as the price list says or by size; empty if neither tells. */
  public Optional<Double> mass() {
    Optional<Double> listed = deal.flatMap(Purchase::mass).map(BigDecimal::doubleValue);
    double count = want.amount().all().doubleValue();
    return listed.or(() -> want.supply().bulk().map(bulk -> bulk.mass() * count));
  }

  /** m³; 0 where the size does not tell. */
  public double volume() {
    double count = want.amount().all().doubleValue();
    return isBought() ? want.supply().bulk().map(bulk -> bulk.volume() * count).orElse(0.0) : 0;
  }
}
