package plycrag.stock;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.prices.PriceList;
import plycrag.units.Count;
import plycrag.units.Tape;

/** Tells where the price list has too few sticks for a wall. */
public final class Shortage {
  /** The name under which the finding stands. */
  public static final String RULE = "stock-available";

  private Shortage() {}

  /** What is short, in one finding; none if there is enough or the list counts nothing. */
  public static Optional<Finding> of(CheckedLayout checked, PriceList prices) {
    if (prices.offers().stream().allMatch(offer -> offer.available().isEmpty())) {
      return Optional.empty();
    }
    StickPlan plan = StickPlan.of(checked, prices);
    return plan.lacking().isEmpty()
        ? Optional.empty()
        : Optional.of(finding(plan, checked.layout().wall().tape()));
  }

  private static Finding finding(StickPlan plan, Tape tape) {
    List<Stick> lacking = plan.lacking();
    String sentence =
        "the price list has too few sticks of "
            + plan.section()
            + " mm: "
            + Count.of(lacking.size(), "stick")
            + (lacking.size() == 1 ? " is" : " are")
            + " short, "
            + lengths(lacking, tape)
            + ", for "
            + lacking.stream()
                .flatMap(stick -> stick.cuts().stream())
                .map(cut -> cut.member().mark())
                .collect(Collectors.joining(" "));
    String suggestion =
        "find them elsewhere, or add a length to [stock] lengths or at-hand; the cutting plan marks"
            + " them as lacking";
    return new Finding(
        RULE,
        Severity.WARNING,
        new Place.WholeWall(),
        lacking.get(0).cuts().get(0).member().mark(),
        "",
        Optional.empty(),
        sentence,
        suggestion);
  }

  private static String lengths(List<Stick> lacking, Tape tape) {
    TreeMap<Double, Integer> counts = new TreeMap<>();
    lacking.forEach(stick -> counts.merge(stick.length(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(one -> one.getValue() + " of " + tape.text(one.getKey()))
        .collect(Collectors.joining(" and "));
  }
}
