package plycrag.check.clearance;

import plycrag.finding.Measure;
import plycrag.params.ClearanceParameters;

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
  Measure measure(Joint joint, ClearanceParameters clearance) {
    return new Measure(joint.within(joint.member().axis().other()), clearance.screwToMemberEdge());
  }

  @Override
  String mark(Joint joint) {
    return joint.member().mark();
  }

  @Override
  String other(Joint joint) {
    return "the side of " + joint.member().mark();
  }

  @Override
  String suggestion() {
    return "back the seam with doubled members or flat timber, or choose a broader section or a"
        + " thinner screw";
  }
}
