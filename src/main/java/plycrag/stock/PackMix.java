package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.prices.Offer;
import plycrag.prices.SaleUnit;

/**
 * Finds the cheapest packs that together hold a quantity: a pack of 200 and one of 50 may cost less
 * than two of 200 or five of 50. Every combination is tried, cut off where it already costs as much
 * as the best; the smallest pack fills what the larger ones leave.
 */
final class PackMix {
  /** More trials than this would take noticeable time; the best until then is taken. */
  private static final int TRIALS = 200_000;

  private final List<Offer> offers;
  private BigDecimal least;
  private List<Purchase> best;
  private int trials;

  private PackMix(Purchase alone, List<Offer> offers) {
    this.offers = offers;
    this.best = List.of(alone);
    this.least = alone.cost().orElse(BigDecimal.ZERO);
  }

  /**
   * The purchases, the largest packs first; only the one given if no mix costs less.
   *
   * @param alone the cheapest of one kind
   * @param offers all of them; those by the metre and those without a price are not mixed
   * @param quantity that is wanted
   */
  static List<Purchase> of(Purchase alone, List<Offer> offers, BigDecimal quantity) {
    List<Offer> mixed =
        offers.stream()
            .filter(offer -> offer.unit() != SaleUnit.METRE && offer.price().isPresent())
            .sorted(Comparator.comparing(Offer::contents).reversed())
            .toList();
    PackMix mix = new PackMix(alone, mixed);
    if (mixed.size() > 1 && alone.cost().isPresent()) {
      mix.search(0, quantity, List.of(), BigDecimal.ZERO);
    }
    return mix.best;
  }

  private void search(int at, BigDecimal rest, List<Purchase> taken, BigDecimal cost) {
    trials++;
    if (trials > TRIALS || cost.compareTo(least) >= 0) {
      return;
    }
    if (rest.signum() <= 0) {
      least = cost;
      best = taken;
    } else if (at < offers.size()) {
      Offer offer = offers.get(at);
      int most = rest.divide(offer.contents(), 0, RoundingMode.CEILING).intValueExact();
      int fewest = at == offers.size() - 1 ? most : 0;
      for (int units = most; units >= fewest; units--) {
        take(at, units, rest, taken, cost);
      }
    }
  }

  private void take(int at, int units, BigDecimal rest, List<Purchase> taken, BigDecimal cost) {
    if (units == 0) {
      search(at + 1, rest, taken, cost);
      return;
    }
    Purchase purchase = new Purchase(offers.get(at), BigDecimal.valueOf(units));
    List<Purchase> more = new ArrayList<>(taken);
    more.add(purchase);
    BigDecimal holds = purchase.offer().contents().multiply(purchase.units());
    search(at + 1, rest.subtract(holds), more, cost.add(purchase.cost().orElseThrow()));
  }
}
