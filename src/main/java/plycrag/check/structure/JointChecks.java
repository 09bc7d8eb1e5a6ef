package plycrag.check.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.joints.Gusset;
import plycrag.layout.structure.MemberAxis;
import plycrag.layout.structure.MemberLine;
import plycrag.solve.fixing.LapScrews;
import plycrag.solve.fixing.ThroughLine;
import plycrag.wall.JointFasteners;

/** Finds what can be checked of what holds a joint, and says what it takes to check the rest. */
final class JointChecks {
  private final Layout layout;
  private final TimberValues timber;
  private final ScrewShear screws;
  private final Map<String, MemberLine> members;

  JointChecks(Layout layout, TimberValues timber, Map<String, MemberLine> members) {
    this.layout = layout;
    this.timber = timber;
    this.screws = new ScrewShear(timber, layout.wall().structure().screws());
    this.members = members;
  }

  /** Those that can be made; none where {@link #needs} says why. */
  List<JointCheck> of(Joint joint) {
    List<ThroughLine> lines =
        layout.fixings().throughOf(joint).map(LapScrews::lines).orElse(List.of());
    return switch (joint.kind()) {
      case FOLD -> lines.isEmpty() ? List.of() : List.of(bolt(joint, lines.get(0)));
      case SIDE -> lines.isEmpty() ? List.of() : screw(joint, lines.get(0));
      case END -> {
        List<JointCheck> checks = gussets(joint);
        if (!checks.isEmpty()) {
          checks.add(new BearingCheck(timber, axis(joint.first()), axis(joint.second())));
        }
        yield checks;
      }
      case SPLICE, STUD_SPLICE -> gussets(joint);
      case FOLD_EDGES, HINGE -> List.of();
    };
  }

  private JointCheck bolt(Joint joint, ThroughLine line) {
    double plate = Math.min(thin(joint.first()), thin(joint.second()));
    return new FoldBoltCheck(timber, layout.wall().joints().bolts().diameter(), plate, line.way());
  }

  private List<JointCheck> screw(Joint joint, ThroughLine line) {
    JointFasteners.JoiningScrews sizes = layout.wall().joints().screws();
    return screws.knows(sizes.diameter())
        ? List.of(
            new LapScrewCheck(screws, line, sizes.diameter(), sizes.length(), thin(joint.first())))
        : List.of();
  }

  private MemberAxis axis(String member) {
    return members.get(member).axis();
  }

  private double thin(String member) {
    MemberAxis axis = axis(member);
    return Math.min(axis.breadth(), axis.depth());
  }

  private List<JointCheck> gussets(Joint joint) {
    List<JointCheck> checks = new ArrayList<>();
    if (layout.fixings().isPaired(joint)) {
      for (Gusset gusset : layout.fixings().gussetsOf(joint)) {
        for (String member : List.of(joint.first(), joint.second())) {
          if (GussetPairCheck.knows(gusset, member, screws)) {
            checks.add(new GussetPairCheck(gusset, members.get(member).axis(), screws));
          }
        }
      }
    }
    return checks;
  }

  /** What it takes to check a joint for which there is no check. */
  String needs(Joint joint) {
    if (!layout.fixings().gussetsOf(joint).isEmpty()) {
      return layout.fixings().isPaired(joint)
          ? "screws whose core is at most 5.4 mm, two in each member"
          : "gussets on both sides, or what one on one side bears";
    }
    if (!layout.fixings().othersOf(joint).isEmpty()) {
      return "nothing of its own: the members beside it hold it";
    }
    return switch (joint.kind()) {
      case HINGE -> "what the hinge bears, by its maker's sheet";
      case SIDE -> "screws whose core is at most 5.4 mm";
      case FOLD, FOLD_EDGES, END, SPLICE, STUD_SPLICE ->
          "what the "
              + (joint.kind() == Joint.Kind.END ? "bracket" : "steel")
              + " bears, by its maker's sheet";
    };
  }
}
