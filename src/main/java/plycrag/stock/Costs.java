package plycrag.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.document.Cell;
import plycrag.document.Table;

/**
 * What everything costs with tax. Sums are of amounts that are rounded line by line; a sum from
 * which a price is missing says so and stands for no total.
 *
 * @param groups in the order of the shopping list
 * @param total of all groups
 * @param currency of all amounts
 */
public record Costs(List<Sum> groups, Sum total, String currency) {
  private static final List<String> COLUMNS =
      List.of("group", "cost", "currency", "priced", "missing", "complete");

  /**
   * A sum.
   *
   * @param name of what
   * @param known of all prices that are known
   * @param priced how many lines these are
   * @param missing how many lines have no price
   */
  public record Sum(String name, BigDecimal known, int priced, int missing) {
    /** Whether no price is missing. */
    public boolean isComplete() {
      return missing == 0;
    }

    Sum plus(Sum other) {
      return new Sum(name, known.add(other.known), priced + other.priced, missing + other.missing);
    }

    static Sum of(String name, ShoppingLine line) {
      return line.isPriceMissing()
          ? new Sum(name, BigDecimal.ZERO, 0, 1)
          : new Sum(name, line.cost().orElse(BigDecimal.ZERO), 1, 0);
    }
  }

  /** Copies the groups. */
  public Costs {
    groups = List.copyOf(groups);
  }

  /** The costs of what is bought. */
  public static Costs of(ShoppingList list) {
    Map<String, Sum> groups = new LinkedHashMap<>();
    Sum total = new Sum("total", BigDecimal.ZERO, 0, 0);
    for (ShoppingLine line : list.lines()) {
      if (line.isBought()) {
        Sum sum = Sum.of(line.need().group(), line);
        groups.merge(sum.name(), sum, Sum::plus);
        total = total.plus(sum);
      }
    }
    return new Costs(List.copyOf(groups.values()), total, list.prices().currency());
  }

  /**
   * The total shared among many, rounded to the hundredth, halves up; empty if it is incomplete.
   *
   * @param parts above 0
   */
  public Optional<BigDecimal> shared(double parts) {
    return total.isComplete() && parts > 0
        ? Optional.of(total.known().divide(BigDecimal.valueOf(parts), 2, RoundingMode.HALF_UP))
        : Optional.empty();
  }

  /** The sums for a spreadsheet, the total last. */
  public Table table() {
    List<List<Cell>> rows = new ArrayList<>();
    groups.forEach(sum -> rows.add(cells(sum)));
    rows.add(cells(total));
    return new Table("Costs", COLUMNS, rows);
  }

  private List<Cell> cells(Sum sum) {
    return List.of(
        Cell.of(sum.name()),
        sum.priced() > 0 ? Cell.money(sum.known()) : Cell.of(ShoppingList.MISSING),
        Cell.of(currency),
        Cell.of(sum.priced()),
        Cell.of(sum.missing()),
        Cell.of(sum.isComplete() ? "yes" : "no"));
  }
}
