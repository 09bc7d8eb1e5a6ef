package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.layout.FacetLayout;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Layout;

/** A rule that asks of each insert alone what surrounds it. */
abstract class InsertRule implements Rule {

  @Override
  public final List<Finding> findings(Layout layout) {
    return layout.facets().stream().flatMap(facet -> on(facet, layout).stream()).toList();
  }

  private List<Finding> on(FacetLayout facet, Layout layout) {
    InsertSurroundings around = facet.surroundings();
    Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
    return facet.inserts().stream()
        .flatMap(insert -> findings(insert, around, report).stream())
        .toList();
  }

  /** What the rule finds at one insert. */
  abstract List<Finding> findings(Insert insert, InsertSurroundings around, Report report);

  /** An insert as the thing judged. */
  static Report.Thing thing(Insert insert) {
    return new Report.Thing(insert.mark(), insert.centre());
  }
}
