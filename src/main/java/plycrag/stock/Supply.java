package plycrag.stock;

import java.util.List;
import java.util.Optional;
import plycrag.params.Article;

/**
 * Where something comes from.
 *
 * @param article as price lists name it; empty if it need not be bought
 * @param size its lengths as price lists give them, mm
 * @param bulk what one of it weighs by its size, where that is known
 */
public record Supply(Optional<Article> article, List<Double> size, Optional<Bulk> bulk) {
  /** Copies the size. */
  public Supply {
    size = List.copyOf(size);
  }

  /** Something that is sold by number. */
  static Supply of(Article article, Double... size) {
    return new Supply(Optional.of(article), List.of(size), Optional.empty());
  }

  /** Something that is at hand or comes from an offcut. */
  static Supply atHand() {
    return new Supply(Optional.empty(), List.of(), Optional.empty());
  }

  Supply weighing(Bulk each) {
    return new Supply(article, size, Optional.of(each));
  }

  /** Its longest side, mm; 0 without a size. */
  double length() {
    return size.stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }
}
