package plycrag.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.layout.Layout;
import plycrag.params.Article;
import plycrag.params.FrameParameters;
import plycrag.params.PriceList;

/**
 * What each length of timber costs with tax.
 *
 * @param currency of the prices, empty if there are none
 * @param hundredths for each length that can be carried home, ascending; empty unless all of them
 *     have a price
 */
record StickPrices(String currency, List<Long> hundredths) {
  /** Copies the prices. */
  StickPrices {
    hundredths = List.copyOf(hundredths);
  }

  static StickPrices none() {
    return new StickPrices("", List.of());
  }

  static StickPrices of(Layout layout, PriceList prices) {
    FrameParameters frame = layout.wall().frame();
    List<Long> hundredths = new ArrayList<>();
    for (double length : layout.wall().stock().carried()) {
      List<Double> size = List.of(frame.breadth(), frame.depth(), length);
      Optional<BigDecimal> cost =
          Deal.best(prices.of(Article.TIMBER, size), BigDecimal.ONE, length).flatMap(Deal::cost);
      if (cost.isEmpty()) {
        return none();
      }
      hundredths.add(cost.get().movePointRight(2).longValueExact());
    }
    return new StickPrices(prices.currency(), hundredths);
  }

  /** Whether plans are counted by cost. */
  boolean isKnown() {
    return !hundredths.isEmpty();
  }
}
