package plycrag.book;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.CheckedLayout;
import plycrag.check.structure.StructureLine;
import plycrag.document.WallPage.Fact;
import plycrag.finding.Severity;
import plycrag.stock.Costs;
import plycrag.stock.JobFigures;
import plycrag.units.Count;
import plycrag.units.Decimal;
import plycrag.units.Significant;

/** The figures of a wall that everybody asks for first. */
final class WallFacts {
  private final CheckedLayout checked;

  WallFacts(CheckedLayout checked) {
    this.checked = checked;
  }

  /**
   * In the order in which they are asked for.
   *
   * @param figures of the whole job
   * @param costs as far as the price list tells them
   */
  List<Fact> all(JobFigures figures, Costs costs) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("to climb on", Decimal.of(figures.area(), 2) + " m²"));
    facts.add(new Fact("as built", Decimal.of(figures.standing(), 0) + " kg"));
    facts.add(new Fact("for holds", Count.of(checked.layout().inserts().size(), "insert")));
    facts.add(new Fact("to buy", Count.of(checked.layout().sheets().size(), "sheet")));
    facts.add(new Fact("price", price(costs.total(), costs.currency())));
    facts.add(new Fact("strength", strength()));
    facts.add(new Fact("found", found()));
    return facts;
  }

  private static String price(Costs.Sum total, String currency) {
    if (total.priced() == 0) {
      return "not told";
    }
    String known = total.known().toPlainString() + " " + currency;
    return total.isComplete() ? known : known + " and " + total.missing() + " without a price";
  }

  private String strength() {
    if (!checked.isReckoned()) {
      return "not reckoned";
    }
    int failing = checked.structure().failing();
    String lines = failing == 0 ? "no line fails" : Count.of(failing, "line") + " fail";
    return checked
        .structure()
        .governing(line -> true)
        .flatMap(StructureLine::utilisation)
        .map(largest -> "utilisation " + Significant.of(largest) + ", " + lines)
        .orElse(lines);
  }

  private String found() {
    return Count.of(checked.findings(Severity.ERROR).size(), "error")
        + ", "
        + Count.of(checked.findings(Severity.WARNING).size(), "warning");
  }
}
