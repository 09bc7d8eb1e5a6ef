package plycrag.app;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.layout.Layout;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;
import plycrag.units.Count;
import plycrag.units.Decimal;

/**
 * What a wall takes to buy and to carry.
 *
 * @param plan of its sticks
 * @param shopping what is bought
 * @param figures of the whole job
 * @param costs as far as the price list tells them
 */
record Bill(StickPlan plan, ShoppingList shopping, JobFigures figures, Costs costs) {

  /** That of a wall that was judged. */
  static Bill of(Design.Judged design) {
    CheckedLayout checked = design.checked();
    StickPlan plan = StickPlan.of(checked, design.prices());
    ShoppingList shopping = ShoppingList.of(checked, plan, design.buying(), design.prices());
    JobFigures figures = JobFigures.of(checked.layout(), plan, shopping);
    return new Bill(plan, shopping, figures, Costs.of(shopping));
  }

  /** All of it in a sentence or two. */
  String words(Layout layout) {
    List<String> parts = new ArrayList<>();
    parts.add(Decimal.of(figures.area(), 2) + " m2 to climb on");
    parts.add(Decimal.of(figures.standing(), 0) + " kg of sheets and timber as built");
    parts.add("the longest to carry " + layout.wall().tape().text(figures.load().longest()));
    return String.join(", ", parts) + ". " + price();
  }

  private String price() {
    Costs.Sum total = costs.total();
    if (total.priced() == 0) {
      return "No price is told: [stock] prices names a list.";
    }
    String sum = "Costs " + total.known().toPlainString() + " " + costs.currency();
    return total.isComplete()
        ? sum + "."
        : sum + " and what " + Count.of(total.missing(), "article") + " without a price cost.";
  }
}
