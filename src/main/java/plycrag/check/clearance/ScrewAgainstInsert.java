package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.layout.FacetLayout;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Layout;
import plycrag.layout.Obstacle;
import plycrag.layout.Screw;

/** A screw keeps clear of the flanges of inserts. */
public final class ScrewAgainstInsert implements Rule {

  @Override
  public String name() {
    return "screw-insert";
  }

  @Override
  public String promise() {
    return "Every screw is clear of the inserts' flanges.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      InsertSurroundings around = facet.surroundings();
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      Map<String, Screw> screws =
          facet.screws().stream()
              .collect(Collectors.toMap(Screw::mark, Function.identity(), (one, same) -> one));
      for (Insert insert : facet.inserts()) {
        for (Obstacle obstacle : around.screws(insert.centre())) {
          findings.add(finding(insert, screws.get(obstacle.mark()), obstacle, report));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Insert insert, Screw screw, Obstacle obstacle, Report report) {
    String other = "screw " + screw.mark() + " in " + screw.member();
    double needed = insert.centre().distance(screw.centre()) + obstacle.measure().shortfall();
    return report.error(
        InsertRule.thing(insert),
        screw.mark(),
        obstacle.measure(),
        "the flange of insert " + insert.mark() + " " + report.standing(obstacle.measure(), other),
        InsertMove.clearOf(screw.centre(), insert, needed).words(insert, report.tape()));
  }
}
