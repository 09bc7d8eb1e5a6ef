package plycrag.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.document.Book.Listing;
import plycrag.document.Book.Paragraph;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;
import plycrag.stock.Need;
import plycrag.stock.ShoppingLine;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;
import plycrag.stock.ToolList;
import plycrag.stock.UnitMass;
import plycrag.units.Decimal;

/** What to buy and to bring: the list with boxes to tick, what it costs, tools, the load. */
final class Buying {
  private final CheckedLayout checked;
  private final StickPlan plan;
  private final ShoppingList list;

  Buying(CheckedLayout checked, StickPlan plan, ShoppingList list) {
    this.checked = checked;
    this.plan = plan;
    this.list = list;
  }

  List<Block> blocks() {
    JobFigures figures = JobFigures.of(checked.layout(), plan, list);
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Caution(
            "No other size.",
            "Take no timber of another section and no sheet of another thickness without building"
                + " the drawings anew: holes would move, and screws would miss."));
    blocks.add(shopping());
    blocks.addAll(free());
    blocks.add(new Paragraph(counting()));
    blocks.add(notes());
    blocks.addAll(costs(figures));
    blocks.add(new Listing(tools()));
    blocks.add(load(figures));
    blocks.add(new Paragraph(loadWords(figures)));
    blocks.add(
        new Paragraph(
            "Not counted: "
                + (checked.layout().support().isPresent()
                    ? ""
                    : "what the frame's support takes and how it is fixed, ")
                + "mats, rolls and trays for paint, deliveries."));
    return blocks;
  }

  private Block shopping() {
    List<String> columns = new ArrayList<>(List.of("Article", "Takes", "Buy"));
    if (list.hasPrices()) {
      columns.add("Cost, " + list.prices().currency());
    }
    columns.add("Got");
    List<List<Cell>> rows =
        list.lines().stream().filter(ShoppingLine::isBought).map(this::cells).toList();
    return new Listing(new Table("Shopping list", columns, rows));
  }

  /** What comes from what is bought for something else, or is there already. */
  private List<Block> free() {
    long parts = list.lines().stream().filter(line -> !line.isBought()).count();
    return parts == 0
        ? List.of()
        : List.of(
            new Paragraph(
                "Not bought: "
                    + parts
                    + (parts == 1 ? " line" : " lines")
                    + " of lists/shopping.csv, which offcuts yield or which is at hand."));
  }

  private List<Cell> cells(ShoppingLine line) {
    Need need = line.need();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.of(need.size().isEmpty() ? need.what() : need.what() + ": " + need.size()));
    cells.add(Cell.of(taken(need)));
    cells.add(Cell.of(bought(line)));
    if (list.hasPrices()) {
      cells.add(cost(line));
    }
    cells.add(Cell.of("☐"));
    return cells;
  }

  /** What to look for, articles of which the same is said together. */
  private Block notes() {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (ShoppingLine line : list.lines().stream().filter(ShoppingLine::isBought).toList()) {
      List<String> alike = groups.computeIfAbsent(line.need().note(), unseen -> new ArrayList<>());
      if (!alike.contains(line.need().what())) {
        alike.add(line.need().what());
      }
    }
    groups.remove("");
    List<List<Cell>> rows = new ArrayList<>();
    groups.forEach(
        (note, articles) -> rows.add(List.of(Cell.of(note), Cell.of(String.join("; ", articles)))));
    return new Listing(new Table("What to ask for", List.of("Ask for", "Of"), rows));
  }

  private static String taken(Need need) {
    String quantity = Decimal.of(need.amount().quantity().doubleValue(), 1);
    String unit = need.amount().unit().equals("litre") ? " l" : "";
    return quantity + unit + (need.amount().spare() > 0 ? " + " + need.amount().spare() : "");
  }

  private static String bought(ShoppingLine line) {
    String units = Decimal.of(line.units().doubleValue(), 3);
    return switch (line.soldAs()) {
      case "piece" -> units;
      case "litre" -> units + " l";
      case "metre" -> units + " m";
      default -> units + " × " + line.soldAs();
    };
  }

  private static Cell cost(ShoppingLine line) {
    return line.isPriceMissing()
        ? Cell.of(ShoppingList.MISSING)
        : line.cost().map(Cell::money).orElse(Cell.of(""));
  }

  private String counting() {
    return "After a plus: 5 % to spare of inserts and of what comes with them. Everything else is"
        + " counted as drawn, without spares"
        + (list.hasPrices()
            ? ", and rounded up to what is sold. Costs are with tax; price and tax of each line are"
                + " rounded to the hundredth, halves up."
            : ". No price list is named, so packs and prices are open; the key prices under"
                + " [stock] names one.");
  }

  private List<Block> costs(JobFigures figures) {
    if (!list.hasPrices()) {
      return List.of();
    }
    Costs costs = Costs.of(list);
    List<List<Cell>> rows = new ArrayList<>();
    Stream.concat(costs.groups().stream(), Stream.of(costs.total()))
        .forEach(
            sum ->
                rows.add(
                    List.of(
                        Cell.of(sum.name()),
                        sum.priced() > 0 ? Cell.money(sum.known()) : Cell.of(""),
                        Cell.of(
                            sum.isComplete()
                                ? "complete"
                                : "incomplete: " + sum.missing() + " missing"))));
    List<String> columns = List.of("Group", "Cost, " + costs.currency(), "Prices");
    return List.of(
        new Listing(new Table("What it costs", columns, rows)),
        new Paragraph(shares(costs, figures)));
  }

  private String shares(Costs costs, JobFigures figures) {
    int inserts = checked.layout().inserts().size();
    if (!costs.total().isComplete()) {
      return "The total is incomplete: where a price is missing nothing was added. So there is no"
          + " cost of a square metre or of an insert.";
    }
    String square =
        costs.shared(figures.area()).map(Decimal::money).orElse("0")
            + " for a square metre of climbing face";
    String insert =
        costs
            .shared(inserts)
            .map(cost -> " and " + Decimal.money(cost) + " for an insert")
            .orElse("");
    return "That is " + costs.currency() + " " + square + insert + ".";
  }

  private Table tools() {
    Table tools = ToolList.of(checked);
    List<List<Cell>> rows = new ArrayList<>();
    for (List<Cell> row : tools.rows()) {
      rows.add(List.of(row.get(0), row.get(1), row.get(2), Cell.of("☐")));
    }
    return new Table("Tools", List.of("Tool", "Size", "For", "Got"), rows);
  }

  private Block load(JobFigures figures) {
    List<List<Cell>> rows =
        List.of(
            row("Climbing face", figures.area(), 2, "m²"),
            row("Waste of sheets", figures.waste().sheets() * 100, 1, "%"),
            row("Waste of sticks", figures.waste().sticks() * 100, 1, "%"),
            row("To carry", figures.load().mass(), 0, "kg"),
            row("Sheets and sticks in the van", figures.load().volume(), 2, "m³"),
            List.of(
                Cell.of("Longest to carry"),
                Cell.of(checked.layout().wall().tape().text(figures.load().longest())),
                Cell.of("")));
    return new Listing(new Table("The whole job", List.of("What", "How much", "Unit"), rows));
  }

  private static List<Cell> row(String what, double value, int decimals, String unit) {
    return List.of(Cell.of(what), Cell.number(value, decimals), Cell.of(unit));
  }

  private static String loadWords(JobFigures figures) {
    return "Where the price list gives no mass, timber is taken at "
        + Decimal.of(UnitMass.TIMBER, 0)
        + " kg/m³ (EN 338, mean of C24) and plywood at "
        + Decimal.of(UnitMass.PLYWOOD, 0)
        + " kg/m³ (birch; assumed, not verified). "
        + figures.load().unweighed()
        + " lines of the list have no mass and are not in the load. The volume is that of the wood,"
        + " without the air between.";
  }
}
