package plycrag.check.standing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.WallSupport;
import plycrag.units.Tape;

/**
 * Where timber of a support ends, plywood on both sides hands on what it carries: what lies on one
 * side alone bends the timber, and a leg of a bracket bends with it.
 */
public final class SupportJoints implements Rule {

  @Override
  public String name() {
    return "support-joints";
  }

  @Override
  public String promise() {
    return "Where timber of a support ends, plywood on both sides holds it.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    layout
        .support()
        .ifPresent(
            support -> {
              Map<Boolean, List<Joint>> bare = new LinkedHashMap<>();
              for (Joint joint : support.joints()) {
                if (isBare(joint, layout)) {
                  boolean isNarrow = layout.fixings().narrow().contains(joint.mark());
                  bare.computeIfAbsent(isNarrow, unseen -> new ArrayList<>()).add(joint);
                }
              }
              bare.forEach((isNarrow, joints) -> findings.add(finding(isNarrow, joints, layout)));
            });
    return findings;
  }

  private static boolean isBare(Joint joint, Layout layout) {
    return joint.kind() == Joint.Kind.END
        && !layout.fixings().isPaired(joint)
        && !isKneeAlong(joint, layout.support().orElseThrow());
  }

  /** A knee brace between posts lies flush with their backs alone, and is screwed to the beam. */
  private static boolean isKneeAlong(Joint joint, WallSupport support) {
    PlacedMember knee = member(joint.first(), support);
    return knee.member().role() == MemberRole.KNEE
        && support.members().stream()
            .filter(placed -> placed.member().mark().equals(joint.second()))
            .noneMatch(other -> other.plane().equals(knee.plane()));
  }

  private static PlacedMember member(String mark, WallSupport support) {
    return support.members().stream()
        .filter(placed -> placed.member().mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private Finding finding(boolean isNarrow, List<Joint> joints, Layout layout) {
    Tape tape = layout.wall().tape();
    Joint joint = joints.get(0);
    String more =
        joints.size() > 1
            ? " and at " + (joints.size() - 1) + " more joint" + (joints.size() > 2 ? "s" : "")
            : "";
    String plywood = tape.size(layout.wall().sheet().thickness());
    String sentence =
        "where "
            + joint.first()
            + " meets "
            + joint.second()
            + more
            + ", plywood of "
            + plywood
            + " finds no place on both sides of the timber"
            + (isNarrow ? "" : ", since inserts, other timber or the building are there");
    String suggestion =
        isNarrow
            ? "choose deeper timber ([frame] section, [support] tie-depth, post-depth, brace-depth,"
                + " ledger-section) or fewer screws ([joints] bracket-screws)"
            : "leave "
                + plywood
                + " more beside the studs there: columns further apart ([inserts] pitch-across), or"
                + " the support at other studs ([support] bay, [frame] stud-spacing), or more space"
                + " behind the wall ([support] behind)";
    return new WholeWall(name(), Severity.ERROR).finding(sentence, suggestion);
  }
}
