package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.finding.Finding;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Obstacle;

/** An insert's flange keeps clear of the edge of its piece, at a seam or not. */
public final class InsertAgainstEdge extends InsertRule {

  @Override
  public String name() {
    return "insert-edge";
  }

  @Override
  public String promise() {
    return "Every insert's flange is clear of the edges and seams of its sheet.";
  }

  @Override
  List<Finding> findings(Insert insert, InsertSurroundings around, Report report) {
    return around.edge(insert.centre()).stream().map(edge -> at(insert, edge, report)).toList();
  }

  private static Finding at(Insert insert, Obstacle edge, Report report) {
    String other = "the edge of piece " + edge.mark();
    return report.error(
        thing(insert),
        edge.mark(),
        edge.measure(),
        "the flange of insert " + insert.mark() + " " + report.standing(edge.measure(), other),
        "move it inward by "
            + report.tape().text(report.tape().snapUp(edge.measure().shortfall())));
  }
}
