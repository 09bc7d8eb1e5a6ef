package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.standing.Mass;

/**
 * The job as a whole.
 *
 * @param area of the climbing face, gaps and openings left out, m²
 * @param standing what the sheets and the timber weigh as they are built in, kg
 * @param waste what is bought and not built in
 * @param load what is carried home
 */
public record JobFigures(double area, double standing, Waste waste, Load load) {
  private static final double SQUARE_METRE = 1e6;

  /**
   * What of the wood is left over.
   *
   * @param sheets what of them becomes no piece, in parts
   * @param sticks what of them becomes no member, in parts
   */
  public record Waste(double sheets, double sticks) {}

  /**
   * What is carried home.
   *
   * @param mass as far as it is known, kg
   * @param unweighed how many lines of the shopping list are not in it
   * @param volume of sheets and sticks, m³
   * @param longest of all lengths, mm
   */
  public record Load(double mass, int unweighed, double volume, double longest) {
    static Load of(ShoppingList list) {
      List<ShoppingLine> bought = list.lines().stream().filter(ShoppingLine::isBought).toList();
      List<Double> masses =
          bought.stream().map(ShoppingLine::mass).flatMap(Optional::stream).toList();
      return new Load(
          masses.stream().mapToDouble(Double::doubleValue).sum(),
          bought.size() - masses.size(),
          bought.stream().mapToDouble(ShoppingLine::volume).sum(),
          bought.stream().mapToDouble(line -> line.need().sourcing().length()).max().orElse(0));
    }
  }

  /** The figures of a layout. */
  public static JobFigures of(Layout layout, StickPlan plan, ShoppingList list) {
    return new JobFigures(
        area(layout),
        Mass.of(layout).kilograms(),
        new Waste(sheetWaste(layout), plan.waste()),
        Load.of(list));
  }

  private static double area(Layout layout) {
    return layout.facets().stream()
            .flatMap(facet -> facet.pieces().stream())
            .mapToDouble(piece -> piece.outline().getArea())
            .sum()
        / SQUARE_METRE;
  }

  private static double sheetWaste(Layout layout) {
    double whole =
        layout.sheets().stream()
            .mapToDouble(sheet -> sheet.stock().width() * sheet.stock().height())
            .sum();
    double used =
        layout.facets().stream()
            .flatMap(facet -> facet.pieces().stream())
            .mapToDouble(piece -> piece.blank().getArea())
            .sum();
    return whole > 0 ? (whole - used) / whole : 0;
  }

  /**
   * The figures for a spreadsheet.
   *
   * @param costs shared among square metres and inserts, where no price is missing
   * @param inserts how many there are
   */
  public Table table(Costs costs, int inserts) {
    List<List<Cell>> rows = new ArrayList<>();
    rows.add(row("climbing face", area, 3, "m2"));
    rows.add(row("waste of sheets", waste.sheets() * 100, 1, "percent"));
    rows.add(row("waste of sticks", waste.sticks() * 100, 1, "percent"));
    rows.add(row("mass to carry", load.mass(), 1, "kg"));
    rows.add(row("articles of unknown mass", load.unweighed(), 0, "lines"));
    rows.add(row("volume of sheets and sticks", load.volume(), 3, "m3"));
    rows.add(row("longest to carry", load.longest(), 1, "mm"));
    rows.add(row("mass of sheets and timber as built", standing, 3, "kg"));
    rows.add(share("cost of a square metre", costs, area));
    rows.add(share("cost of an insert", costs, inserts));
    return new Table("The whole job", List.of("figure", "value", "unit"), rows);
  }

  private static List<Cell> share(String figure, Costs costs, double parts) {
    Cell cost = costs.shared(parts).map(Cell::money).orElse(Cell.of(ShoppingList.MISSING));
    return List.of(Cell.of(figure), cost, Cell.of(costs.currency()));
  }

  private static List<Cell> row(String figure, double value, int decimals, String unit) {
    return List.of(Cell.of(figure), Cell.number(value, decimals), Cell.of(unit));
  }
}
