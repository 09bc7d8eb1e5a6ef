package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.params.ClearanceParameters;

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
  Measure measure(Joint joint, ClearanceParameters clearance) {
    return new Measure(joint.within(joint.member().axis()), clearance.screwToMemberEnd());
  }

  @Override
  String mark(Joint joint) {
    return joint.member().mark();
  }

  @Override
  String other(Joint joint) {
    return "the end of " + joint.member().mark();
  }

  @Override
  String suggestion() {
    return "set the studs further apart, or choose a thinner screw";
  }
}
