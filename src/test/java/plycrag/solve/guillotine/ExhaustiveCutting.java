package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least price, then the fewest sheets, by trying everything: for every set of items all least
 * rectangles it can be cut from, then every way of sharing the items among sheets. Kerfs are added
 * where two parts meet. For five items or so.
 */
public final class ExhaustiveCutting {
  private final List<StockKind> stock;
  private final Cutting cutting;
  private final List<List<Size>> sizes = new ArrayList<>();

  /** A rectangle's width and height, mm. */
  private record Size(double width, double height) {}

  /** What a plan costs. */
  public record Cost(long price, int sheets) {
    Cost and(StockKind kind) {
      return new Cost(price + kind.price(), sheets + 1);
    }

    boolean isBelow(Cost other) {
      return price < other.price || (price == other.price && sheets < other.sheets);
    }
  }

  /** Tries them all. */
  public ExhaustiveCutting(List<Item> items, List<StockKind> stock, Cutting cutting) {
    this.stock = stock;
    this.cutting = cutting;
    sizes.add(List.of());
    for (int set = 1; set < 1 << items.size(); set++) {
      sizes.add(Integer.bitCount(set) == 1 ? single(items, set) : joined(set));
    }
  }

  /** Empty if the stock does not hold the items. */
  public Optional<Cost> best() {
    int[] limits = stock.stream().mapToInt(StockKind::limit).toArray();
    return best(sizes.size() - 1, limits);
  }

  private static List<Size> single(List<Item> items, int set) {
    Item item = items.get(Integer.numberOfTrailingZeros(set));
    Size upright = new Size(item.width(), item.height());
    Size turned = new Size(item.height(), item.width());
    return item.mayTurn() ? List.of(upright, turned) : List.of(upright);
  }

  private List<Size> joined(int set) {
    List<Size> found = new ArrayList<>();
    for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      for (Size one : sizes.get(part)) {
        for (Size other : sizes.get(set & ~part)) {
          double width = one.width() + cutting.kerf() + other.width();
          double height = one.height() + cutting.kerf() + other.height();
          found.add(new Size(width, Math.max(one.height(), other.height())));
          found.add(new Size(Math.max(one.width(), other.width()), height));
        }
      }
    }
    return least(found);
  }

  private static List<Size> least(List<Size> all) {
    return all.stream()
        .distinct()
        .filter(
            size ->
                all.stream()
                    .noneMatch(
                        other ->
                            !other.equals(size)
                                && other.width() <= size.width()
                                && other.height() <= size.height()))
        .toList();
  }

  private Optional<Cost> best(int items, int[] limits) {
    if (items == 0) {
      return Optional.of(new Cost(0, 0));
    }
    Optional<Cost> best = Optional.empty();
    int first = Integer.lowestOneBit(items);
    for (int kind = 0; kind < limits.length; kind++) {
      for (int set = items; set > 0; set = (set - 1) & items) {
        if ((set & first) != 0 && limits[kind] > 0 && holds(stock.get(kind), set)) {
          best = lesser(best, rest(items & ~set, limits, kind));
        }
      }
    }
    return best;
  }

  private Optional<Cost> rest(int items, int[] limits, int kind) {
    int[] fewer = limits.clone();
    fewer[kind]--;
    return best(items, fewer).map(cost -> cost.and(stock.get(kind)));
  }

  private boolean holds(StockKind kind, int set) {
    double width = kind.width() - 2 * cutting.trim();
    double height = kind.height() - 2 * cutting.trim();
    return sizes.get(set).stream()
        .anyMatch(size -> size.width() <= width && size.height() <= height);
  }

  private static Optional<Cost> lesser(Optional<Cost> one, Optional<Cost> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    return other.get().isBelow(one.get()) ? other : one;
  }
}
