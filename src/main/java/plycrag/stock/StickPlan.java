package plycrag.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plycrag.check.CheckedLayout;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.layout.Layout;
import plycrag.layout.frame.Member;
import plycrag.prices.PriceList;
import plycrag.wall.buying.Section;
import plycrag.wall.buying.TimberStock;

/**
 * The sticks of a wall and what is cut from them, section by section: at the least cost or, where
 * prices are missing, with the least length bought; then with the least waste. Of what merchants
 * have only so many no more is taken while the rest will do; what still lacks is planned with and
 * told. Sticks at hand are of the frame's section.
 *
 * @param sections a plan for each, the frame's first; their sticks are numbered through
 */
public record StickPlan(List<SectionPlan> sections) {
  private static final List<String> COLUMNS =
      List.of("section", "stick", "stock_length_mm", "mark", "length_mm", "offset_mm");

  /** Copies the plans. */
  public StickPlan {
    sections = List.copyOf(sections);
  }

  /** The plan for all members of a layout, by the prices of the lengths that are sold. */
  public static StickPlan of(CheckedLayout checked, PriceList prices) {
    Layout layout = checked.layout();
    List<SectionPlan> plans = new ArrayList<>();
    int sticks = 0;
    for (Map.Entry<Section, List<Member>> group : layout.sections().members().entrySet()) {
      TimberStock stock =
          plans.isEmpty() ? layout.wall().stock() : layout.wall().stock().withNothingAtHand();
      StickPrices sold = StickPrices.of(group.getKey(), stock, prices);
      StickMeasure measure = new StickMeasure(layout.wall().tape().unit(), stock, sold);
      SectionPlan plan = SectionPlan.of(group.getKey(), group.getValue(), measure).after(sticks);
      plans.add(plan);
      sticks += plan.sticks().size();
    }
    return new StickPlan(plans);
  }

  /** All of them, in the order of cutting. */
  public List<Stick> sticks() {
    return sections.stream().flatMap(plan -> plan.sticks().stream()).toList();
  }

  /** Whether they are of more than one section. */
  public boolean isMixed() {
    return sections.size() > 1;
  }

  /** What becomes no member, kerfs and trimmed ends counted, in parts of all sticks' volume. */
  public double waste() {
    double whole = 0;
    double wasted = 0;
    for (SectionPlan plan : sections) {
      double length = plan.sticks().stream().mapToDouble(Stick::length).sum();
      whole += length * plan.section().area();
      wasted += length * plan.section().area() * plan.waste();
    }
    return whole > 0 ? wasted / whole : 0;
  }

  /** The plan for a spreadsheet: a row a piece. */
  public Table table() {
    List<List<Cell>> rows = new ArrayList<>();
    for (Stick stick : sticks()) {
      for (Stick.Cut cut : stick.cuts()) {
        rows.add(
            List.of(
                Cell.of(stick.section()),
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
