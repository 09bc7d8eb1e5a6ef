package plycrag.check.clearance;

import org.locationtech.jts.geom.Envelope;
import plycrag.finding.Measure;
import plycrag.layout.Axis;
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
    return new Measure(within(joint, joint.member().axis().other()), clearance.screwToMemberEdge());
  }

  /** How far a screw lies inside its member along an axis, mm. */
  static double within(Joint joint, Axis axis) {
    double place = axis.low(joint.screw().centre().getEnvelopeInternal());
    Envelope box = joint.member().box();
    return Math.min(place - axis.low(box), axis.high(box) - place);
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
