package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.finding.Finding;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Obstacle;

/** An insert's centre keeps the setback from the facet's outline. */
public final class Setback extends InsertRule {

  @Override
  public String name() {
    return "setback";
  }

  @Override
  public String promise() {
    return "Every insert keeps the setback from the facet's outline.";
  }

  @Override
  List<Finding> findings(Insert insert, InsertSurroundings around, Report report) {
    return around.outline(insert.centre()).stream().map(near -> at(insert, near, report)).toList();
  }

  private static Finding at(Insert insert, Obstacle outline, Report report) {
    return report.error(
        thing(insert),
        report.facet(),
        outline.measure(),
        "insert "
            + insert.mark()
            + " stands "
            + report.tape().text(Math.max(0, outline.measure().found()))
            + " inside the facet's outline",
        "move it inward by "
            + report.tape().text(report.tape().snapUp(outline.measure().shortfall()))
            + ", or make the setback smaller");
  }
}
