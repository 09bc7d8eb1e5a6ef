package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.Member;
import plycrag.params.StockParameters;
import plycrag.stock.cutting.CuttingPlan;
import plycrag.stock.cutting.CuttingPlanner;

/**
 * The sticks of a wall and what is cut from them: the least length bought, then the least waste.
 *
 * @param section of all of them, the smaller side first, mm
 * @param sticks in the order of cutting
 * @param tooLong members that no stick yields
 * @param boughtLength of all bought sticks, mm
 * @param leastBoughtLength no plan buys less, mm; lengths are counted to the tenth of a millimetre
 *     or, in inch files, to 1/128 in, in the saw's favour
 */
public record StickPlan(
    String section,
    List<Stick> sticks,
    List<Member> tooLong,
    double boughtLength,
    double leastBoughtLength) {
  private static final long STEPS = 1_000_000_000;
  private static final List<String> COLUMNS =
      List.of("section", "stick", "stock_length_mm", "mark", "length_mm", "offset_mm");

  /** Copies the lists. */
  public StickPlan {
    sticks = List.copyOf(sticks);
    tooLong = List.copyOf(tooLong);
  }

  /** The plan for all members of a layout. */
  public static StickPlan of(CheckedLayout checked) {
    Layout layout = checked.layout();
    StockParameters stock = layout.wall().stock();
    return of(
        Section.name(layout.wall().frame()),
        layout.members(),
        new StickMeasure(layout.wall().tape().unit(), stock));
  }

  static StickPlan of(String section, List<Member> members, StickMeasure measure) {
    List<Member> yielded = members.stream().filter(measure::isYielded).toList();
    List<Member> tooLong = members.stream().filter(member -> !measure.isYielded(member)).toList();
    Optional<CuttingPlan> plan = CuttingPlanner.plan(measure.task(yielded), STEPS);
    CuttingPlan found =
        plan.orElseThrow(() -> new IllegalStateException("bought sticks hold every member"));
    List<Stick> sticks = new StickFiller(measure, yielded).sticks(found);
    double bought =
        sticks.stream().filter(stick -> !stick.isAtHand()).mapToDouble(Stick::length).sum();
    double least = bought - measure.millimetres(found.cost() - found.costBound());
    return new StickPlan(section, sticks, tooLong, bought, least);
  }

  /** Whether no plan buys less. */
  public boolean isLeast() {
    return leastBoughtLength == boughtLength;
  }

  /** What becomes no member, kerfs and trimmed ends counted, in parts of all sticks' length. */
  public double waste() {
    double whole = sticks.stream().mapToDouble(Stick::length).sum();
    double used =
        sticks.stream()
            .flatMap(stick -> stick.cuts().stream())
            .mapToDouble(cut -> cut.member().length())
            .sum();
    return whole > 0 ? (whole - used) / whole : 0;
  }

  /** The plan for a spreadsheet: a row a piece. */
  public Table table() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Stick stick : sticks) {
      for (Stick.Cut cut : stick.cuts()) {
        rows.add(
            List.of(
                Cell.of(section),
                Cell.of(stick.number()),
                Cell.mm(stick.length()),
                Cell.of(cut.member().mark()),
                Cell.mm(cut.member().length()),
                Cell.mm(cut.offset())));
      }
    }
    return new Table("Cutting plan", COLUMNS, rows);
  }
}
