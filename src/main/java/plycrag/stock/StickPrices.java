package plycrag.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.prices.Article;
import plycrag.prices.Offer;
import plycrag.prices.PriceList;
import plycrag.solve.cutting.CuttingTask;
import plycrag.wall.buying.Section;
import plycrag.wall.buying.TimberStock;

/**
 * What each length of timber costs with tax, and how many sticks of it there are.
 *
 * @param currency of the prices; empty unless every length that can be carried home has a price
 * @param lengths for each length that can be carried home, ascending, what is sold of it
 */
record StickPrices(String currency, List<List<Tier>> lengths) {
  private static final Tier OPEN = new Tier(0, CuttingTask.Stock.UNLIMITED);

  /**
   * Sticks of one length at one price.
   *
   * @param hundredths of the currency; 0 where prices are not known
   * @param limit how many there are
   */
  record Tier(long hundredths, int limit) {}

  /** Copies the lengths. */
  StickPrices {
    lengths = lengths.stream().map(List::copyOf).toList();
  }

  /** The prices of a section in the lengths that can be carried home. */
  static StickPrices of(Section section, TimberStock stock, PriceList prices) {
    List<List<Tier>> priced = new ArrayList<>();
    List<List<Tier>> unpriced = new ArrayList<>();
    for (double length : stock.carried()) {
      List<Double> size = List.of(section.breadth(), section.depth(), length);
      ScarceOffer offers = ScarceOffer.of(prices.of(Article.TIMBER, size));
      priced.add(tiers(offers, length));
      unpriced.add(List.of(offers.others().isEmpty() ? limited(offers) : OPEN));
    }
    return priced.stream().noneMatch(List::isEmpty)
        ? new StickPrices(prices.currency(), priced)
        : new StickPrices("", unpriced);
  }

  private static Tier limited(ScarceOffer offers) {
    return offers.available().map(most -> new Tier(0, most)).orElse(OPEN);
  }

  /** What is sold of a length; nothing if what there is enough of has no price. */
  private static List<Tier> tiers(ScarceOffer offers, double length) {
    List<Tier> tiers = new ArrayList<>();
    offers
        .scarce()
        .flatMap(scarce -> hundredths(List.of(scarce), length))
        .ifPresent(cost -> tiers.add(new Tier(cost, offers.available().orElseThrow())));
    if (!offers.others().isEmpty()) {
      Optional<Long> cost = hundredths(offers.others(), length);
      cost.ifPresent(each -> tiers.add(new Tier(each, CuttingTask.Stock.UNLIMITED)));
      return cost.isPresent() ? tiers : List.of();
    }
    return tiers;
  }

  private static Optional<Long> hundredths(List<Offer> offers, double length) {
    return Purchase.best(offers, BigDecimal.ONE, length)
        .flatMap(Purchase::cost)
        .map(cost -> cost.movePointRight(2).longValueExact());
  }

  /** Whether plans are counted by cost. */
  boolean isKnown() {
    return !currency.isEmpty();
  }

  /** What is sold of a length, by its place among those that can be carried home. */
  List<Tier> of(int index) {
    return lengths.get(index);
  }
}
