package plycrag.stock;

import java.util.List;
import java.util.Optional;
import plycrag.prices.Article;

/**
 * Where something comes from.
 *
 * @param article as price lists name it; empty if it need not be bought
 * @param size its lengths as price lists give them, mm
 * @param unitMass what one of it weighs by its size, where that is known
 */
record Sourcing(Optional<Article> article, List<Double> size, Optional<UnitMass> unitMass) {
  /** Copies the size. */
  public Sourcing {
    size = List.copyOf(size);
  }

  /** Something that is sold by number. */
  static Sourcing of(Article article, Double... size) {
    return new Sourcing(Optional.of(article), List.of(size), Optional.empty());
  }

  /** Something that is at hand or comes from an offcut. */
  static Sourcing atHand() {
    return new Sourcing(Optional.empty(), List.of(), Optional.empty());
  }

  Sourcing weighing(UnitMass each) {
    return new Sourcing(article, size, Optional.of(each));
  }

  /** Its longest side, mm; 0 without a size. */
  double length() {
    return size.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
