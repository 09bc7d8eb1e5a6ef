package plycrag.stock;

import java.util.List;
import java.util.Optional;
import plycrag.prices.Offer;

/**
 * The offers of one article and size, told apart by whether there are as many as are wanted.
 *
 * @param scarce of which there are only so many
 * @param others of which there is no end
 */
record ScarceOffer(Optional<Offer> scarce, List<Offer> others) {
  /** Copies the offers. */
  ScarceOffer {
    others = List.copyOf(others);
  }

  static ScarceOffer of(List<Offer> offers) {
    return new ScarceOffer(
        offers.stream().filter(offer -> offer.available().isPresent()).findFirst(),
        offers.stream().filter(offer -> offer.available().isEmpty()).toList());
  }

  /** How many there are of the scarce one, if there is one. */
  Optional<Integer> available() {
    return scarce.flatMap(Offer::available);
  }
}
