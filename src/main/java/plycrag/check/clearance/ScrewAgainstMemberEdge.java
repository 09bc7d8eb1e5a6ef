package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;

/** A screw's centre keeps its distance from the sides of its member. */
public final class ScrewAgainstMemberEdge extends ScrewRule {

  @Override
  public String name() {
    return "screw-member-edge";
  }

  @Override
  public String promise() {
    return "Every screw keeps its edge distance in the timber.";
  }

  @Override
  Measure measure(Grip grip, Clearances clearance) {
    return new Measure(grip.within(false), clearance.screw().toMemberEdge());
  }

  @Override
  String mark(Grip grip) {
    return grip.member().mark();
  }

  @Override
  String other(Grip grip) {
    return "the side of " + grip.member().mark();
  }

  @Override
  String suggestion(Frame frame) {
    return backed(frame) + "choose broader timber ([frame] section) or " + THINNER;
  }
}
