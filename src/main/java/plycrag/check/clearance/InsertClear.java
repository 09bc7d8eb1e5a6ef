package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Hindrance;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Obstacle;

/** Every insert keeps clear of one kind of hindrance, which names the rule and has its words. */
public final class InsertClear implements Rule {
  private final Hindrance hindrance;

  /**
   * The rule of one hindrance.
   *
   * @param hindrance what inserts keep clear of
   */
  public InsertClear(Hindrance hindrance) {
    this.hindrance = hindrance;
  }

  @Override
  public String name() {
    return hindrance.name();
  }

  @Override
  public String promise() {
    return hindrance.promise();
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      for (Insert insert : facet.inserts()) {
        for (Obstacle obstacle : facet.surroundings().of(hindrance, insert.centre())) {
          findings.add(finding(insert, obstacle, facet, report));
        }
      }
    }
    return findings;
  }

  private Finding finding(Insert insert, Obstacle obstacle, FacetLayout facet, Report report) {
    return report.error(
        new Report.Thing(insert.mark(), insert.centre()),
        obstacle.mark(),
        obstacle.measure(),
        hindrance.sentence(insert, obstacle, report.tape()),
        hindrance.remedy(insert, obstacle, facet.facet(), report.tape()));
  }
}
