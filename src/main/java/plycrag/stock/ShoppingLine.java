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
 * @param need what the wall takes
 * @param purchase what the price list offers for it; empty if it offers nothing
 */
public record ShoppingLine(Need need, Optional<Purchase> purchase) {

  /** The lines of a need: one for each kind of pack that the cheapest purchase takes. */
  static List<ShoppingLine> of(Need need, PriceList prices) {
    Sourcing sourcing = need.sourcing();
    List<Offer> offers =
        sourcing.article().map(article -> prices.of(article, sourcing.size())).orElse(List.of());
    ScarceOffer told = ScarceOffer.of(offers);
    if (told.scarce().isPresent()) {
      return scarce(need, told.scarce().get(), told.others());
    }
    return enough(need, offers);
  }

  private static List<ShoppingLine> enough(Need need, List<Offer> offers) {
    BigDecimal all = need.amount().all();
    Sourcing sourcing = need.sourcing();
    return Purchase.best(offers, all, sourcing.length())
        .map(alone -> lines(need, PackMix.of(alone, offers, all)))
        .orElse(List.of(new ShoppingLine(need, Optional.empty())));
  }

  /** As many as there are where that is the cheapest, the rest from others or from elsewhere. */
  private static List<ShoppingLine> scarce(Need need, Offer scarce, List<Offer> others) {
    BigDecimal all = need.amount().all();
    List<Offer> each = Stream.concat(Stream.of(scarce), others.stream()).toList();
    boolean isCheapest =
        Purchase.best(each, BigDecimal.ONE, need.sourcing().length())
            .map(purchase -> purchase.offer().equals(scarce))
            .orElseThrow();
    BigDecimal most = BigDecimal.valueOf(isCheapest ? scarce.available().orElseThrow() : 0);
    BigDecimal taken = all.min(most);
    BigDecimal rest = all.subtract(taken);
    List<ShoppingLine> lines = new ArrayList<>();
    if (taken.signum() > 0) {
      lines.add(new ShoppingLine(need.taking(taken, 0), Optional.of(new Purchase(scarce, taken))));
    }
    if (rest.signum() > 0 && others.isEmpty()) {
      lines.add(new ShoppingLine(need.taking(rest, 0).lacking(), Optional.empty()));
    } else if (rest.signum() > 0) {
      lines.addAll(enough(need.taking(rest, 0), others));
    }
    return lines;
  }

  /** What each purchase's packs hold, the last of them what is still wanted. */
  private static List<ShoppingLine> lines(Need need, List<Purchase> purchases) {
    List<ShoppingLine> lines = new ArrayList<>();
    Need rest = need;
    for (Purchase purchase : purchases.subList(0, purchases.size() - 1)) {
      BigDecimal holds = purchase.units().multiply(purchase.offer().contents());
      BigDecimal part = rest.amount().quantity().min(holds);
      int spare = Math.min(rest.amount().spare(), holds.subtract(part).intValue());
      lines.add(new ShoppingLine(rest.taking(part, spare), Optional.of(purchase)));
      Need.Amount left = rest.amount();
      rest = rest.taking(left.quantity().subtract(part), left.spare() - spare);
    }
    lines.add(new ShoppingLine(rest, Optional.of(purchases.get(purchases.size() - 1))));
    return lines;
  }

  /** Whether it is bought at all. */
  public boolean isBought() {
    return need.sourcing().article().isPresent();
  }

  /** How many units are bought. */
  public BigDecimal units() {
    BigDecimal wanted = need.amount().all().setScale(1, RoundingMode.CEILING);
    return isBought() ? purchase.map(Purchase::units).orElse(wanted) : BigDecimal.ZERO;
  }

  /** In which units; empty for what is not bought. */
  public String soldAs() {
    return isBought() ? purchase.map(Purchase::soldAs).orElse(need.amount().unit()) : "";
  }

  /** What it costs with tax; empty if it is not bought or its price is missing. */
  public Optional<BigDecimal> cost() {
    return purchase.flatMap(Purchase::cost);
  }

  /** Whether it must be bought and nobody says for how much. */
  public boolean isPriceMissing() {
    return isBought() && cost().isEmpty();
  }

  /** What must be carried, kg: as the price list says or by size; empty if neither tells. */
  public Optional<Double> mass() {
    Optional<Double> listed = purchase.flatMap(Purchase::mass).map(BigDecimal::doubleValue);
    double count = need.amount().all().doubleValue();
    return listed.or(() -> need.sourcing().unitMass().map(each -> each.mass() * count));
  }

  /** m³; 0 where the size does not tell. */
  public double volume() {
    double count = need.amount().all().doubleValue();
    return isBought()
        ? need.sourcing().unitMass().map(each -> each.volume() * count).orElse(0.0)
        : 0;
  }
}
