package plycrag.prices;

import java.util.List;

/**
 * What a merchant asks.
 *
 * @param currency three letters, ISO 4217; empty if nothing is offered
 * @param offers in the order of the list
 */
public record PriceList(String currency, List<Offer> offers) {
  /** Copies the offers. */
  public PriceList {
    offers = List.copyOf(offers);
  }

  /** A list without offers. */
  public static PriceList empty() {
    return new PriceList("", List.of());
  }

  /**
   * The offers of an article: those of this very size, or else those that name no size.
   *
   * @param size lengths in mm, empty if the article has none
   */
  public List<Offer> of(Article article, List<Double> size) {
    List<Offer> sold = offers.stream().filter(offer -> offer.article() == article).toList();
    List<Offer> exact = sold.stream().filter(offer -> offer.isOf(size)).toList();
    return exact.isEmpty() ? sold.stream().filter(offer -> offer.size().isEmpty()).toList() : exact;
  }
}
