package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.finding.Finding;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Obstacle;

/** A hole lies wholly inside one piece. */
public final class HoleOutsidePiece extends InsertRule {

  @Override
  public String name() {
    return "hole-outside";
  }

  @Override
  public String promise() {
    return "Every hole lies wholly inside one piece.";
  }

  @Override
  List<Finding> findings(Insert insert, InsertSurroundings around, Report report) {
    return around.outside(insert.centre()).stream().map(out -> at(insert, out, report)).toList();
  }

  private static Finding at(Insert insert, Obstacle outside, Report report) {
    String where =
        outside.mark().isEmpty()
            ? "lies in no piece"
            : "lies across the edge of piece " + outside.mark();
    return report.error(
        thing(insert),
        outside.mark(),
        outside.measure(),
        "the hole of insert " + insert.mark() + " " + where,
        "move it inward by "
            + report.tape().text(report.tape().snapUp(outside.measure().shortfall()))
            + " or more");
  }
}
