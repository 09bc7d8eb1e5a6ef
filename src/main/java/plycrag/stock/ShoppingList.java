package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.prices.Article;
import plycrag.prices.PriceList;
import plycrag.units.Tape;
import plycrag.wall.buying.MaterialWishes;

/**
 * What to buy, as merchants sell it.
 *
 * @param lines sheets, timber, inserts, bolts for holds, screws, hardware, finish
 * @param prices what the lines were priced by
 * @param tape in which sizes are shown
 * @param grade of the framing timber, in the merchant's words
 */
public record ShoppingList(List<ShoppingLine> lines, PriceList prices, Tape tape, String grade) {
  /** What stands where a price is missing. */
  public static final String MISSING = "missing";

  private static final List<String> COLUMNS =
      List.of(
          "group",
          "article",
          "size",
          "quantity",
          "unit",
          "spare",
          "buy",
          "sold_as",
          "price",
          "currency",
          "tax_percent",
          "cost",
          "mass_kg",
          "note",
          "list_article",
          "list_size");

  /** Copies the lines. */
  public ShoppingList {
    lines = List.copyOf(lines);
  }

  /** The list of a layout. */
  public static ShoppingList of(
      CheckedLayout checked, StickPlan plan, MaterialWishes buying, PriceList prices) {
    Layout layout = checked.layout();
    List<Need> needs = new ArrayList<>();
    needs.addAll(new WoodNeeds(layout, plan, buying).needs());
    needs.addAll(new HardwareNeeds(layout, buying.environment()).needs());
    needs.addAll(new FinishNeeds(layout).needs());
    List<ShoppingLine> lines =
        needs.stream()
            .filter(need -> need.amount().quantity().signum() > 0)
            .flatMap(need -> ShoppingLine.of(need, prices).stream())
            .toList();
    return new ShoppingList(lines, prices, layout.wall().tape(), buying.timber().grade());
  }

  /** Whether anything has a price. */
  public boolean hasPrices() {
    return !prices.offers().isEmpty();
  }

  /** The list for a spreadsheet; the last two columns name each line as a price list does. */
  public Table table() {
    return new Table("Shopping list", COLUMNS, lines.stream().map(this::cells).toList());
  }

  private List<Cell> cells(ShoppingLine line) {
    Need need = line.need();
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                Cell.of(need.group()),
                Cell.of(need.what()),
                Cell.of(need.size()),
                Cell.number(need.amount().quantity().doubleValue(), 1),
                Cell.of(need.amount().unit()),
                Cell.of(need.amount().spare()),
                Cell.number(line.units().doubleValue(), 3),
                Cell.of(line.soldAs())));
    cells.addAll(money(line));
    cells.add(line.mass().map(mass -> Cell.number(mass, 2)).orElse(Cell.of("")));
    cells.add(Cell.of(need.note()));
    cells.add(Cell.of(need.sourcing().article().map(Article::word).orElse("")));
    cells.add(Cell.of(listSize(need.sourcing().size())));
    return cells;
  }

  private List<Cell> money(ShoppingLine line) {
    if (line.isPriceMissing()) {
      return List.of(Cell.of(MISSING), Cell.of(""), Cell.of(""), Cell.of(MISSING));
    }
    return line.purchase()
        .map(
            purchase ->
                List.of(
                    Cell.money(purchase.offer().price().orElseThrow()),
                    Cell.of(prices.currency()),
                    Cell.number(purchase.offer().tax().doubleValue(), 4),
                    Cell.money(purchase.cost().orElseThrow())))
        .orElse(List.of(Cell.of(""), Cell.of(""), Cell.of(""), Cell.of("")));
  }

  private String listSize(List<Double> size) {
    return size.isEmpty()
        ? ""
        : size.stream().map(tape::bareSize).collect(Collectors.joining(" x "))
            + " "
            + tape.unit().word();
  }
}
