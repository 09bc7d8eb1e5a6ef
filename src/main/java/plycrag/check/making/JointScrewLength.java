package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.units.Tape;
import plycrag.wall.ScrewReach;

/** The screws that join members side by side reach into the second one and not out of it. */
public final class JointScrewLength implements Rule {
  @Override
  public String name() {
    return "joint-screw-length";
  }

  @Override
  public String promise() {
    return "The screws between members side by side reach far enough and not out of them.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    boolean needed = layout.joints().stream().anyMatch(one -> one.kind() == Joint.Kind.SIDE);
    double breadth = layout.wall().frame().breadth();
    double length = layout.wall().joints().screws().length();
    double diameter = layout.wall().joints().screws().diameter();
    Measure bite = new Measure(length - breadth, ScrewReach.DEPTH_IN_DIAMETERS * diameter);
    Measure rest = new Measure(2 * breadth - length, ScrewReach.FAR_SIDE);
    if (needed && Tolerance.isSome(bite.shortfall())) {
      findings.add(finding(bite, bite(bite, layout.wall().tape()), layout));
    }
    if (needed && Tolerance.isSome(rest.shortfall())) {
      findings.add(finding(rest, rest(rest, layout.wall().tape()), layout));
    }
    return findings;
  }

  private static String bite(Measure bite, Tape tape) {
    return bite.found() > 0
        ? "bite " + tape.size(bite.found()) + " into the second"
        : "do not reach the second";
  }

  private static String rest(Measure rest, Tape tape) {
    return "end "
        + tape.size(Math.abs(rest.found()))
        + (rest.found() < 0 ? " beyond" : " before")
        + " the far side of the second";
  }

  private Finding finding(Measure measure, String what, Layout layout) {
    Tape tape = layout.wall().tape();
    double breadth = layout.wall().frame().breadth();
    ScrewReach reach = ScrewReach.sideBySide(breadth, layout.wall().joints().screws().diameter());
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "",
            "",
            measure,
            "screws of "
                + tape.size(layout.wall().joints().screws().length())
                + " through a member of "
                + tape.size(breadth)
                + " "
                + what
                + "; "
                + tape.size(measure.required())
                + " are required",
            suggestion(reach, layout.wall().joints().screws().diameter(), tape));
  }

  private static String suggestion(ScrewReach reach, double diameter, Tape tape) {
    return Tolerance.isMore(reach.least(), reach.most())
        ? "no length would do; choose thinner ones ([joints] screw-diameter), or broader timber"
            + " ([frame] section)"
        : "choose screws of "
            + tape.size(reach.least())
            + " to "
            + tape.size(reach.most())
            + " "
            + Cure.length("[joints] screw-length", reach.middling(diameter, tape), tape).words();
  }
}
