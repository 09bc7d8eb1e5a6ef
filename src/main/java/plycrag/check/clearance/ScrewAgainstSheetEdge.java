package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.geometry.Distances;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;

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
  Measure measure(Grip grip, Clearances clearance) {
    double found = -Distances.from(grip.screw().centre(), grip.piece().core());
    return new Measure(found, clearance.screw().toSheetEdge());
  }

  @Override
  String mark(Grip grip) {
    return grip.piece().mark();
  }

  @Override
  String other(Grip grip) {
    return "the edge of " + grip.piece().mark();
  }

  @Override
  String suggestion(Frame frame) {
    return backed(frame) + "choose " + THINNER;
  }
}
