package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Paragraph;
import plycrag.drawing.pen.ViewKind;
import plycrag.stock.Outlay;
import plycrag.stock.StickPlan;
import plycrag.units.Decimal;
import plycrag.units.Tape;

/** How the timber is cut: what it takes, how good the plan is, the sticks, the list. */
final class Sawing {
  private final CheckedLayout checked;
  private final StickPlan plan;
  private final String grade;
  private final Figures figures;

  Sawing(CheckedLayout checked, StickPlan plan, String grade, Figures figures) {
    this.checked = checked;
    this.plan = plan;
    this.grade = grade;
    this.figures = figures;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Cautions.timber());
    if (!plan.sticks().isEmpty()) {
      blocks.add(new Paragraph(told()));
    }
    blocks.addAll(
        figures.of(
            ViewKind.CUTTING_PLAN,
            "What is cut from which stick, with the mark and the length of every piece."));
    blocks.add(Listings.cutList(checked, grade));
    return blocks;
  }

  private String told() {
    Tape tape = checked.layout().wall().tape();
    long bought = plan.sticks().stream().filter(stick -> !stick.isAtHand()).count();
    long atHand = plan.sticks().size() - bought;
    return "The plan buys "
        + sticks(bought)
        + ", "
        + tape.text(plan.boughtLength())
        + " in all"
        + (plan.lacking().isEmpty()
            ? ""
            : ", of which " + sticks(plan.lacking().size()) + " must be found elsewhere")
        + (atHand > 0 ? ", and uses " + sticks(atHand) + " at hand" : "")
        + ". "
        + Decimal.of(plan.waste() * 100, 1)
        + " % of the sticks is waste, saw cuts included. "
        + proof(tape);
  }

  private String proof(Tape tape) {
    if (plan.outlay() instanceof Outlay.OfMoney money) {
      String cost = money.currency() + " " + Decimal.money(money.cost());
      return money.isLeast()
          ? "The sticks cost " + cost + ", and no plan costs less."
          : "The sticks cost "
              + cost
              + "; no plan costs less than "
              + Decimal.money(money.least())
              + "; whether one costs less than this is open.";
    }
    Outlay.OfLength length = (Outlay.OfLength) plan.outlay();
    return length.isLeast()
        ? "It is counted by length bought. No plan buys less: the bound is the same length."
        : "It is counted by length bought. No plan buys less than "
            + tape.text(length.least())
            + "; whether one buys less than this is open.";
  }

  private static String sticks(long count) {
    return count + (count == 1 ? " stick" : " sticks");
  }
}
