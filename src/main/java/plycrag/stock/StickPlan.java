package plycrag.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.frame.Member;
import plycrag.prices.PriceList;
import plycrag.solve.cutting.CuttingPlan;
import plycrag.solve.cutting.ScarceCutting;

/**
 * The sticks of a wall and what is cut from them: at the least cost or, where prices are missing,
 * with the least length bought; then with the least waste. Of what merchants have only so many no
 * more is taken while the rest will do; what still lacks is planned with and told.
 *
 * @param section of all of them, the smaller side first, mm
 * @param sticks in the order of cutting
 * @param tooLong members that no stick yields
 * @param outlay what it spends, and what no plan falls below
 */
public record StickPlan(String section, List<Stick> sticks, List<Member> tooLong, Outlay outlay) {
  private static final long STEPS = 1_000_000_000;
  private static final List<String> COLUMNS =
      List.of("section", "stick", "stock_length_mm", "mark", "length_mm", "offset_mm");

  /** Copies the lists. */
  public StickPlan {
    sticks = List.copyOf(sticks);
    tooLong = List.copyOf(tooLong);
  }

  /** The plan for all members of a layout, by the prices of the lengths that are sold. */
  public static StickPlan of(CheckedLayout checked, PriceList prices) {
    Layout layout = checked.layout();
    StickMeasure measure =
        new StickMeasure(
            layout.wall().tape().unit(), layout.wall().stock(), StickPrices.of(layout, prices));
    return of(SectionName.name(layout.wall().frame()), layout.members(), measure);
  }

  static StickPlan of(String section, List<Member> members, StickMeasure measure) {
    List<Member> yielded = members.stream().filter(measure::isYielded).toList();
    List<Member> tooLong = members.stream().filter(member -> !measure.isYielded(member)).toList();
    CuttingPlan found = ScarceCutting.plan(measure.task(yielded), measure.sold(), STEPS);
    List<Stick> sticks = new StickFiller(measure, yielded).sticks(found);
    return new StickPlan(section, sticks, tooLong, outlay(found, sticks, measure));
  }

  private static Outlay outlay(CuttingPlan plan, List<Stick> sticks, StickMeasure measure) {
    if (measure.prices().isKnown()) {
      return new Outlay.OfMoney(
          BigDecimal.valueOf(plan.cost(), 2),
          BigDecimal.valueOf(plan.costBound(), 2),
          measure.prices().currency());
    }
    double bought = boughtLength(sticks);
    return new Outlay.OfLength(
        bought, bought - measure.millimetres(plan.cost() - plan.costBound()));
  }

  /** Those that no merchant of the price list has any more. */
  public List<Stick> lacking() {
    return sticks.stream().filter(Stick::isLacking).toList();
  }

  /** Of all bought sticks, those lacking among them, mm. */
  public double boughtLength() {
    return boughtLength(sticks);
  }

  private static double boughtLength(List<Stick> sticks) {
    return sticks.stream().filter(stick -> !stick.isAtHand()).mapToDouble(Stick::length).sum();
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
