package plycrag.check.making;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.solve.fixing.LapScrews;
import plycrag.units.Tape;
import plycrag.wall.JointFasteners;

/** Screws between members side by side and bolts across folds keep their distances in both. */
public final class JointScrewRoom implements Rule {

  @Override
  public String name() {
    return "joint-screw-room";
  }

  @Override
  public String promise() {
    return "Screws and bolts between members beside each other keep their distances from sides, ends and"
        + " each other.";
  }

  /** What is the same of some joints. */
  private record Alike(Joint.Kind kind, LapScrews.Asked asked, double thickest) {
    boolean isBolt() {
      return kind == Joint.Kind.FOLD;
    }

    String words() {
      return isBolt() ? "bolts" : "screws";
    }
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Map<Alike, List<Joint>> groups = new LinkedHashMap<>();
    for (Joint joint : layout.joints()) {
      layout
          .fixings()
          .throughOf(joint)
          .filter(screws -> !screws.holds())
          .map(screws -> new Alike(joint.kind(), screws.asked(), screws.thickest()))
          .ifPresent(
              alike -> groups.computeIfAbsent(alike, unseen -> new ArrayList<>()).add(joint));
    }
    List<Finding> findings = new ArrayList<>();
    apart(layout).ifPresent(findings::add);
    groups.forEach((alike, joints) -> findings.add(finding(alike, joints, layout)));
    return findings;
  }

  /** Joints whose members only touch: nothing goes through both. */
  private Optional<Finding> apart(Layout layout) {
    List<Joint> apart =
        layout.joints().stream()
            .filter(joint -> joint.kind() == Joint.Kind.SIDE || joint.kind() == Joint.Kind.FOLD)
            .filter(joint -> layout.fixings().throughOf(joint).isEmpty())
            .filter(joint -> layout.fixings().gussetsOf(joint).isEmpty())
            .filter(joint -> layout.fixings().othersOf(joint).isEmpty())
            .toList();
    return apart.stream()
        .findFirst()
        .map(
            joint ->
                new WholeWall(name(), Severity.WARNING)
                    .finding(
                        "where "
                            + joint.first()
                            + " meets "
                            + joint.second()
                            + AlikeCount.of(apart.size(), "joint")
                            + ", the two do not lie against each other, and nothing goes through"
                            + " both",
                        "screw a block of timber behind both, or a bracket into their corner"));
  }

  private Finding finding(Alike alike, List<Joint> where, Layout layout) {
    Tape tape = layout.wall().tape();
    Joint joint = where.get(0);
    LapScrews.Asked asked = alike.asked();
    JointFasteners joints = layout.wall().joints();
    double diameter = alike.isBolt() ? joints.bolts().diameter() : joints.screws().diameter();
    String sentence =
        "where "
            + joint.first()
            + " lies against "
            + joint.second()
            + AlikeCount.of(where.size(), "joint")
            + ", "
            + alike.words()
            + " of "
            + tape.size(diameter)
            + " find no room: "
            + tape.size(asked.first().side())
            + " to the sides and "
            + tape.size(asked.first().end())
            + " to the ends of the first, "
            + tape.size(asked.second().side())
            + " and "
            + tape.size(asked.second().end())
            + " of the second, and "
            + tape.size(asked.apart())
            + " between each other are required"
            + (alike.isBolt() ? "" : " (EN 1995-1-1 Table 8.2)");
    return new WholeWall(name(), Severity.WARNING).finding(sentence, suggestion(alike, tape));
  }

  private static String suggestion(Alike alike, Tape tape) {
    LapScrews.Asked asked = alike.asked();
    String broader =
        "let them overlap by "
            + tape.text(tape.snapUp(asked.overlap()))
            + " on a face of "
            + tape.text(tape.snapUp(asked.breadth()))
            + " at least, or put a bracket beside them";
    return alike.thickest() > 0
        ? "choose "
            + alike.words()
            + " of "
            + tape.size(alike.thickest())
            + " or thinner ([joints] "
            + (alike.isBolt() ? "bolt" : "screw")
            + "-diameter), "
            + broader
        : "none would do; " + broader;
  }
}
