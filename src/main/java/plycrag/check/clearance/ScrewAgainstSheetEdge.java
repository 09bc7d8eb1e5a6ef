package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.params.ClearanceParameters;

/** A screw's centre keeps its distance from the edge of its piece. */
public final class ScrewAgainstSheetEdge extends ScrewRule {

  @Override
  public String name() {
    return "screw-sheet-edge";
  }

  @Override
  public String promise() {
    return "Every screw keeps its edge distance in the sheet.";
  }

  @Override
  Measure measure(Joint joint, ClearanceParameters clearance) {
    double found = -Shapes.distance(joint.screw().centre(), joint.piece().core());
    return new Measure(found, clearance.screwToSheetEdge());
  }

  @Override
  String mark(Joint joint) {
    return joint.piece().mark();
  }

  @Override
  String other(Joint joint) {
    return "the edge of " + joint.piece().mark();
  }

  @Override
  String suggestion() {
    return "back the seam with doubled members or flat timber, or choose a thinner screw";
  }
}
