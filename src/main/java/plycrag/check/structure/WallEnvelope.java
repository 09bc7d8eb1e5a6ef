package plycrag.check.structure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.structure.Combination;
import plycrag.layout.structure.FrameVariant;
import plycrag.layout.structure.JointPath;
import plycrag.layout.structure.LoadCases;
import plycrag.layout.structure.MemberLine;
import plycrag.layout.structure.StructureModel;
import plycrag.layout.structure.WallCase;
import plycrag.layout.support.Anchor;
import plycrag.solve.frame.CriticalLoad;
import plycrag.solve.frame.FrameAnalysis;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameOutcome;
import plycrag.solve.frame.FrameSolution;
import plycrag.solve.frame.Motion;
import plycrag.solve.frame.NodeForce;
import plycrag.units.Decimal;

/** Solves a wall under all loads, and keeps the worst for each of its parts. */
final class WallEnvelope {
  private final Layout layout;
  private final TimberValues timber;
  private final Map<String, MemberEnvelope> members = new LinkedHashMap<>();
  private final Map<String, JointEnvelope> joints = new LinkedHashMap<>();
  private final Map<String, AnchorEnvelope> anchors = new LinkedHashMap<>();
  private final Map<String, AnchorEnvelope.Force> tethers = new LinkedHashMap<>();
  private final List<StructureLine> standing = new ArrayList<>();

  WallEnvelope(Layout layout, TimberValues timber) {
    this.layout = layout;
    this.timber = timber;
  }

  /** Takes all loads in on the wall at an angle, taken for a frame in one way. */
  void add(double angle, FrameVariant variant) {
    StructureModel model = StructureModel.of(layout, angle, timber.elastic(), variant);
    for (MemberLine member : model.members()) {
      if (member.isHeld()) {
        members.computeIfAbsent(member.axis().mark(), mark -> new MemberEnvelope(member, timber));
      }
    }
    Map<String, MemberLine> byMark =
        model.members().stream()
            .collect(Collectors.toMap(one -> one.axis().mark(), Function.identity()));
    JointChecks checks = new JointChecks(layout, timber, byMark);
    Set<String> passing =
        model.joints().stream().map(path -> path.joint().mark()).collect(Collectors.toSet());
    layout.joints().stream()
        .filter(joint -> passing.contains(joint.mark()))
        .forEach(
            joint ->
                joints.computeIfAbsent(joint.mark(), mark -> new JointEnvelope(joint, checks)));
    FrameAnalysis analysis = FrameAnalysis.of(model.frame());
    String how = variant.words() + at(angle, model);
    boolean fell = false;
    for (WallCase one : LoadCases.of(layout, model, angle)) {
      String words = one.name() + "; " + how;
      FrameOutcome outcome = analysis.firstOrder(one.loads());
      if (outcome instanceof FrameSolution solution) {
        take(model, solution, one, words);
      } else {
        if (!fell) {
          fall(model, (FrameOutcome.Unsolved) outcome, one, variant, words);
        }
        fell = true;
        if (one.combination() == Combination.PERMANENT) {
          return;
        }
      }
    }
    if (variant.sheeted() && !variant.jointsStiff() && !fell) {
      sway(model, LoadCases.highest(layout, model, angle), how);
    }
    if (variant.sheeted() && !fell) {
      standing.add(told("wall", "stands still", how, new LineStatus.Passes()));
    }
  }

  /**
   * By how much loads could grow until it buckles as a whole, EN 1995-1-1, 5.4.4: below ten its own
   * movement adds to what is reckoned here. Members in two pieces.
   */
  private void sway(StructureModel model, WallCase highest, String how) {
    FrameOutcome outcome = FrameAnalysis.of(model.frame(), 2).firstOrder(highest.loads());
    if (outcome instanceof FrameSolution solution) {
      double grows = solution.criticalLoad().map(CriticalLoad::factor).orElse(FAR);
      standing.add(
          new StructureLine(
              "wall",
              "sways: times that loads could grow",
              "EN 1995-1-1, 5.4.4",
              highest.name() + "; " + how,
              Math.min(grows, FAR),
              Optional.of(LEAST_GROWTH),
              "",
              Optional.of(LEAST_GROWTH / grows),
              grows >= LEAST_GROWTH
                  ? new LineStatus.Passes()
                  : new LineStatus.NotChecked("forces of second order"),
              "the frame's own eigenvalue",
              Optional.empty()));
    }
  }

  /** Above it nobody asks, EN 1993-1-1, 5.2.1 (3), after which EN 1995 is read. */
  private static final double LEAST_GROWTH = 10;

  /** What buckles later than this does not, times. */
  private static final double FAR = 1000;

  private static StructureLine told(String part, String check, String words, LineStatus status) {
    return new StructureLine(
        part,
        check,
        "",
        words,
        0,
        Optional.empty(),
        "",
        Optional.empty(),
        status,
        "solved as a frame without friction",
        Optional.empty());
  }

  private static String at(double angle, StructureModel model) {
    return model.tethers().isEmpty() ? "" : ", at " + Decimal.of(angle, 2) + "°";
  }

  private void take(StructureModel model, FrameSolution solution, WallCase loads, String words) {
    for (MemberLine member : model.members()) {
      if (member.isHeld()) {
        members.get(member.axis().mark()).add(member, solution, loads.combination(), words);
      }
    }
    for (JointPath path : model.joints()) {
      joints.get(path.joint().mark()).add(path, solution, loads.combination(), words);
    }
    Map<FrameNode, NodeForce> reactions = solution.reactions();
    model
        .anchors()
        .forEach(
            (mark, node) ->
                anchors
                    .computeIfAbsent(mark, one -> new AnchorEnvelope(outward(model, one)))
                    .add(
                        reactions.get(node),
                        edge(model, solution, mark),
                        loads.combination(),
                        words));
    if (loads.combination().isUltimate()) {
      for (String tether : model.tethers()) {
        tethers.merge(
            tether,
            new AnchorEnvelope.Force(Math.abs(solution.axial(tether)), words),
            (before, now) -> now.amount() > before.amount() ? now : before);
      }
    }
  }

  /** What an edge beside an anchor presses against the building, N; pulls below zero. */
  private static double edge(StructureModel model, FrameSolution solution, String anchor) {
    String bar = model.edges().get(anchor);
    return bar == null ? 0 : -solution.axial(bar);
  }

  private Vector3 outward(StructureModel model, String mark) {
    Anchor anchor =
        layout.support().orElseThrow().anchors().stream()
            .filter(one -> one.mark().equals(mark))
            .findFirst()
            .orElseThrow();
    MemberLine member = model.member(anchor.member());
    return member.axis().at(member.axis().foot(anchor.place())).minus(anchor.place()).unit();
  }

  /** A frame that does not stand by itself has a joint too few; else these loads lift it. */
  private void fall(
      StructureModel model,
      FrameOutcome.Unsolved outcome,
      WallCase loads,
      FrameVariant variant,
      String words) {
    String check =
        loads.combination() == Combination.PERMANENT ? "stands still" : "keeps to the floor";
    String part = "wall";
    String moves = "no equilibrium was found";
    if (outcome instanceof FrameOutcome.Mechanism mechanism) {
      Motion motion = mechanism.motions().get(0);
      MotionWords told = new MotionWords(model);
      part = told.part(motion);
      moves = told.of(motion);
    }
    LineStatus status =
        variant.sheeted()
            ? new LineStatus.Fails()
            : new LineStatus.WouldPass("all sheets are on and screwed as listed");
    String without = variant.sheeted() ? "" : " without its sheets";
    standing.add(told(part, check + without + ": " + moves, words, status));
  }

  /** The members that the frame knows, in the order of the layout. */
  Map<String, MemberEnvelope> members() {
    return members;
  }

  /** The joints through which forces go, by their marks. */
  Map<String, JointEnvelope> joints() {
    return joints;
  }

  /** The anchors, by their marks. */
  Map<String, AnchorEnvelope> anchors() {
    return anchors;
  }

  /** The greatest force in each tether, by its mark. */
  Map<String, AnchorEnvelope.Force> tethers() {
    return tethers;
  }

  /** Whether it stands at all. */
  List<StructureLine> standing() {
    return standing;
  }
}
