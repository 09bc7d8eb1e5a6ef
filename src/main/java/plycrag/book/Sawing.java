package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Block;
import plycrag.document.Book.Paragraph;
import plycrag.drawing.pen.ViewKind;
import plycrag.stock.Outlay;
import plycrag.stock.SectionPlan;
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
    plan.sections().stream()
        .filter(sticks -> !sticks.sticks().isEmpty())
        .forEach(sticks -> blocks.add(new Paragraph(heading(sticks) + told(sticks))));
    blocks.addAll(
        figures.of(
            ViewKind.CUTTING_PLAN,
            "What is cut from which stick, with the mark and the length of every piece."));
    blocks.add(Listings.cutList(checked, grade));
    return blocks;
  }

  private String heading(SectionPlan sticks) {
    return plan.isMixed() ? "Timber of " + sticks.name() + " mm. " : "";
  }

  private String told(SectionPlan sticks) {
    Tape tape = checked.layout().wall().tape();
    long bought = sticks.sticks().stream().filter(stick -> !stick.isAtHand()).count();
    long atHand = sticks.sticks().size() - bought;
    return "The plan buys "
        + sticks(bought)
        + ", "
        + tape.text(sticks.boughtLength())
        + " in all"
        + (sticks.lacking().isEmpty()
            ? ""
            : ", of which " + sticks(sticks.lacking().size()) + " must be found elsewhere")
        + (atHand > 0 ? ", and uses " + sticks(atHand) + " at hand" : "")
        + ". "
        + Decimal.of(sticks.waste() * 100, 1)
        + " % of the sticks is waste, saw cuts included. "
        + proof(sticks.outlay(), tape);
  }

  private static String proof(Outlay outlay, Tape tape) {
    if (outlay instanceof Outlay.OfMoney money) {
      String cost = money.currency() + " " + Decimal.money(money.cost());
      return money.isLeast()
          ? "The sticks cost " + cost + ", and no plan costs less."
          : "The sticks cost "
              + cost
              + "; no plan costs less than "
              + Decimal.money(money.least())
              + "; whether one costs less than this is open.";
    }
    Outlay.OfLength length = (Outlay.OfLength) outlay;
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
