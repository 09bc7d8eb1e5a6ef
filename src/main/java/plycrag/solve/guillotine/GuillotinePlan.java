package plycrag.solve.guillotine;

import java.util.List;

/**
 * Where every item is cut from.
 *
 * @param sheets in the order of the stock kinds, each with at least one item
 * @param left items for which no room was found in stock that is limited throughout; otherwise
 *     empty
 * @param bound no plan for all items has fewer sheets than this
 */
public record GuillotinePlan(List<CutSheet> sheets, List<Item> left, int bound) {

  /** Keeps copies. */
  public GuillotinePlan {
    sheets = List.copyOf(sheets);
    left = List.copyOf(left);
  }

  /** Of all sheets, in the unit of the stock kinds' prices. */
  public long price() {
    return sheets.stream().mapToLong(sheet -> sheet.kind().price()).sum();
  }
}
