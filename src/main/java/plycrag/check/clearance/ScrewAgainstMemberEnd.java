package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;

/** A screw's centre keeps its distance from the ends of its member. */
public final class ScrewAgainstMemberEnd extends ScrewRule {

  @Override
  public String name() {
    return "screw-member-end";
  }

  @Override
  public String promise() {
    return "Every screw keeps its end distance in the timber.";
  }

  @Override
  Measure measure(Grip grip, Clearances clearance) {
    return new Measure(grip.within(true), clearance.screw().toMemberEnd());
  }

  @Override
  String mark(Grip grip) {
    return grip.member().mark();
  }

  @Override
  String other(Grip grip) {
    return "the end of " + grip.member().mark();
  }

  @Override
  String suggestion(Frame frame) {
    return "set the studs further apart ([frame] stud-spacing), or choose " + THINNER;
  }
}
