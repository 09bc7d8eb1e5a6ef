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
import plycrag.layout.skin.FoldCut;
import plycrag.solve.fixing.SteelChoice;
import plycrag.solve.fixing.SteelChoice.Room;
import plycrag.solve.fixing.SteelPlan;
import plycrag.units.Decimal;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.GivenWall.FoldEdges;

/** Every joint that takes a bracket, a strap or a hinge is held by one, by others or a gusset. */
public final class BracketFits implements Rule {
  private static final double LEAST_LEG = 1;

  @Override
  public String name() {
    return "bracket-fits";
  }

  @Override
  public String promise() {
    return "The catalogue has a bracket, strap or hinge for every joint that takes one, or others or"
        + " a gusset hold it, or it is said what would do.";
  }

  /** What is the same of some joints. */
  private record Alike(Joint.Kind kind, String suggestion) {}

  @Override
  public List<Finding> findings(Layout layout) {
    Map<Alike, List<Joint>> groups = new LinkedHashMap<>();
    for (Joint joint : layout.joints()) {
      Optional<SteelChoice> choice = layout.fixings().steelOf(joint);
      if (choice.isPresent() && layout.fixings().isUnheld(joint)) {
        Alike alike = new Alike(joint.kind(), suggestion(joint, choice.get(), layout));
        groups.computeIfAbsent(alike, unseen -> new ArrayList<>()).add(joint);
      }
    }
    List<Finding> findings = new ArrayList<>();
    groups.forEach((alike, joints) -> findings.add(finding(alike, joints)));
    return findings;
  }

  private Finding finding(Alike alike, List<Joint> joints) {
    Joint joint = joints.get(0);
    String sentence =
        "the catalogue has no "
            + what(alike.kind())
            + " for "
            + joint.first()
            + " and "
            + joint.second()
            + AlikeCount.of(joints.size(), "joint")
            + " ("
            + alike.kind().words()
            + ")";
    return new WholeWall(name(), Severity.WARNING).finding(sentence, alike.suggestion());
  }

  /** What would let timber lie back to back at a fold where it does not; nothing if that is so. */
  private static String back(Joint joint, Layout layout) {
    Optional<Fold> fold = fold(joint, layout);
    if (fold.filter(one -> !FoldCut.canRip(one)).isPresent()) {
      return "let facets "
          + owner(joint.first(), layout).name()
          + " and "
          + fold.get().other()
          + " turn toward each other by at most "
          + Decimal.of(FoldCut.greatestTurn(), 0)
          + "° (it is "
          + Decimal.of(fold.get().turn(), 1)
          + "°), where mitred timber lies back to back and takes bolts; or ";
    }
    return layout.wall().foldEdges() == FoldEdges.SQUARE
        ? "mitre what meets at the fold ([wall] fold-edges), so that bolts go through both; or "
        : "";
  }

  private static Optional<Fold> fold(Joint joint, Layout layout) {
    String other = owner(joint.second(), layout).name();
    return owner(joint.first(), layout).folds().stream()
        .filter(fold -> fold.other().equals(other))
        .findFirst();
  }

  private static Facet owner(String member, Layout layout) {
    return layout.facets().stream()
        .filter(facet -> facet.members().stream().anyMatch(one -> one.mark().equals(member)))
        .findFirst()
        .orElseThrow()
        .facet();
  }

  private static String what(Joint.Kind kind) {
    return switch (kind) {
      case HINGE -> "hinge";
      case SPLICE, STUD_SPLICE -> "strap";
      case FOLD_EDGES -> "bracket";
      default -> "bracket or strap";
    };
  }

  private static String suggestion(Joint joint, SteelChoice choice, Layout layout) {
    Optional<Room> found = choice.room();
    if (choice.closed().isPresent()) {
      return "their faces close to "
          + Decimal.of(choice.closed().get(), 1)
          + "°, too sharp for a bracket, and no gusset finds room; fill the corner with a wedge of"
          + " timber cut to that angle, and drive bolts or long screws through both and the wedge";
    }
    boolean hasRoom = found.filter(room -> room.leg() >= LEAST_LEG).isPresent();
    if (!hasRoom && joint.kind() == Joint.Kind.FOLD_EDGES) {
      return back(joint, layout)
          + "fill the gap with a wedge of timber cut to it, and bolt through both and the wedge";
    }
    if (!hasRoom) {
      return "no two of their faces take a leg each, and no gusset finds room; choose broader timber";
    }
    Room room = found.get();
    Tape tape = layout.wall().tape();
    if (room.diameter() == 0) {
      return "no screw of "
          + tape.size(SteelPlan.THINNEST)
          + " or thicker keeps its distances there and stays inside, and no gusset finds room; choose"
          + " broader timber";
    }
    String piece =
        "one at most "
            + tape.size(room.breadth())
            + " wide, with legs of at most "
            + tape.text(tape.snapDown(room.leg()))
            + " and holes for screws of "
            + tape.size(room.diameter())
            + " from "
            + tape.text(tape.snapUp(room.first()))
            + " on";
    int wanted = layout.wall().joints().bracketScrews();
    if (room.screws() == 0) {
      return "no leg longer than "
          + tape.text(tape.snapDown(room.leg()))
          + " finds room there, and its first screw would stand "
          + tape.text(tape.snapUp(room.first()))
          + " from the bend; choose broader timber, or fill the corner with a block of timber and"
          + " screw it to both";
    }
    return room.screws() >= wanted
        ? piece + " would do"
        : piece
            + " would take "
            + room.screws()
            + " of the "
            + wanted
            + " screws; ask for fewer ([joints] bracket-screws) or choose broader timber";
  }
}
