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
import plycrag.wall.Wall;

/** Tells where the price list has too few sticks for a wall. */
public final class Shortage {
  /** The name under which the finding stands. */
  public static final String RULE = "stock-available";

  private Shortage() {}

  /** What is short, a finding a section; none if there is enough or the list counts nothing. */
  public static List<Finding> of(CheckedLayout checked, PriceList prices) {
    if (prices.offers().stream().allMatch(offer -> offer.available().isEmpty())) {
      return List.of();
    }
    return StickPlan.of(checked, prices).sections().stream()
        .filter(plan -> !plan.lacking().isEmpty())
        .map(plan -> finding(plan, checked.layout().wall()))
        .toList();
  }

  private static Finding finding(SectionPlan plan, Wall wall) {
    boolean ofFrame = plan.section().equals(wall.frame().section());
    List<Stick> lacking = plan.lacking();
    String sentence =
        "the price list has too few sticks of "
            + plan.name()
            + " mm: "
            + Count.of(lacking.size(), "stick")
            + (lacking.size() == 1 ? " is" : " are")
            + " short, "
            + lengths(lacking, wall.tape())
            + ", for "
            + lacking.stream()
                .flatMap(stick -> stick.cuts().stream())
                .map(cut -> cut.member().mark())
                .collect(Collectors.joining(" "));
    String suggestion =
        "find them elsewhere, or add a length to [stock] lengths"
            + (ofFrame ? " or at-hand" : "")
            + "; the cutting plan marks them as lacking";
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
