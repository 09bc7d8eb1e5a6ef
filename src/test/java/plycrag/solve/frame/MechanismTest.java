package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plycrag.solve.frame.PlaneFrame.hinge;
import static plycrag.solve.frame.PlaneFrame.loads;
import static plycrag.solve.frame.PlaneFrame.vector;
import static plycrag.solve.frame.Timber.S1;
import static plycrag.solve.frame.Timber.S2;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Vector3;

/** What moves is told with how it moves: structural case A22, and what loads set free. */
class MechanismTest {
  private static FrameOutcome.Mechanism mechanism(FrameOutcome outcome) {
    assertThat(outcome).isInstanceOf(FrameOutcome.Mechanism.class);
    return (FrameOutcome.Mechanism) outcome;
  }

  private static Motion only(FrameOutcome outcome) {
    List<Motion> motions = mechanism(outcome).motions();
    assertThat(motions).hasSize(1);
    return motions.get(0);
  }

  private static void moves(Motion motion, FrameNode node, Vector3 translation) {
    assertThat(motion.all().get(node).translation().minus(translation).length())
        .isCloseTo(0, within(1e-9));
  }

  private static void turns(Motion motion, FrameNode node, double rotation) {
    assertThat(motion.all().get(node).rotation().z()).isCloseTo(rotation, within(1e-9));
  }

  /** A22 (a), Pynite's issue 275: a hinge in the middle of a beam on two supports; m. */
  @Test
  void hingeInABeam() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("h", 1, 0)
            .node("b", 2, 0)
            .pin("a")
            .hold("b", Freedom.ALONG_Y)
            .beam("a", "h", S1);
    frame.beam(hinge(frame.node("h")), BeamEnd.rigid(frame.node("b")), S1);
    Motion motion = only(frame.outcome(frame.push("h", 0, -1)));
    assertThat(motion.node().name()).isEqualTo("h");
    assertThat(motion.freedom()).isEqualTo(Freedom.ALONG_Y);
    assertThat(motion.amount()).isEqualTo(1);
    moves(motion, frame.node("h"), vector(0, 1, 0));
    turns(motion, frame.node("a"), 1);
    turns(motion, frame.node("h"), 1);
    turns(motion, frame.node("b"), -1);
  }

  private static PlaneFrame parallelogram() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("foot 1", 0, 0)
            .node("top 1", 0, 2400)
            .node("top 2", 1200, 2400)
            .node("foot 2", 1200, 0)
            .pin("foot 1")
            .pin("foot 2")
            .beam("foot 1", "top 1", S2)
            .beam("foot 2", "top 2", S2);
    return frame.beam(hinge(frame.node("top 1")), hinge(frame.node("top 2")), S1);
  }

  /** A22 (b): posts on pins and a rail on pins: both tops move alike. */
  @Test
  void parallelogramMoves() {
    PlaneFrame frame = parallelogram();
    Motion motion = only(frame.outcome(frame.push("top 1", 0, -1000)));
    assertThat(motion.node().name()).isEqualTo("top 1");
    assertThat(motion.freedom()).isEqualTo(Freedom.ALONG_X);
    moves(motion, frame.node("top 1"), vector(1, 0, 0));
    moves(motion, frame.node("top 2"), vector(1, 0, 0));
    turns(motion, frame.node("foot 1"), -1.0 / 2400);
  }

  @Test
  void diagonalHoldsIt() {
    PlaneFrame frame = parallelogram().bars(1e7, "foot 1-top 2");
    assertThat(frame.outcome(frame.push("top 1", 1000, -1000))).isInstanceOf(FrameSolution.class);
  }

  /** As stiff as a sheet on it would have it: 4 N/mm · 1200 / 2400. */
  @Test
  void sheetHoldsIt() {
    PlaneFrame frame = parallelogram();
    List<Attachment> corners =
        List.of("foot 1", "foot 2", "top 2", "top 1").stream()
            .map(name -> Attachment.at(frame.node(name)))
            .toList();
    FrameModel bare = frame.model();
    FrameModel model =
        new FrameModel(
            bare.beams(),
            bare.bars(),
            List.of(new ShearPanel("sheet", corners, 4)),
            bare.supports());
    FrameSolution solution =
        (FrameSolution)
            FrameAnalysis.of(model)
                .firstOrder(loads(frame.push("top 1", 50, 0), frame.push("top 2", 50, 0)));
    double sway = solution.motion(frame.node("top 1")).translation().x();
    assertThat(sway).isCloseTo(100.0 / (4 * 1200 / 2400.0), withinPercentage(0.05));
    assertThat(Math.abs(solution.shearFlow("sheet"))).isCloseTo(100.0 / 1200, within(1e-9));
  }

  /** A22 (c): side frames of bars that nothing ties, a rail, one diagonal, two. */
  private static FrameOutcome sideFrames(String... ties) {
    List<FrameNode> nodes = new ArrayList<>();
    List<Bar> bars = new ArrayList<>();
    List<FrameSupport> supports = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      FrameNode front = new FrameNode("front " + side, vector(0, 0, 1200 * side));
      FrameNode rear = new FrameNode("rear " + side, vector(900, 0, 1200 * side));
      FrameNode top = new FrameNode("top " + side, vector(600, 2400, 1200 * side));
      nodes.addAll(List.of(front, rear, top));
      supports.addAll(FrameSupport.pinned(front));
      supports.addAll(FrameSupport.pinned(rear));
      bars.add(Bar.between("stud " + side, front, top, 1e7));
      bars.add(Bar.between("post " + side, rear, top, 1e7));
    }
    for (String tie : ties) {
      String[] ends = tie.split(" to ", -1);
      bars.add(Bar.between(tie, named(nodes, ends[0]), named(nodes, ends[1]), 1e7));
    }
    return FrameAnalysis.of(new FrameModel(List.of(), bars, List.of(), supports))
        .firstOrder(loads(FrameLoad.on(named(nodes, "top 0"), vector(0, -1000, 100))));
  }

  private static FrameNode named(List<FrameNode> nodes, String name) {
    return nodes.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void sideFramesFallSideways() {
    List<Motion> each = mechanism(sideFrames()).motions();
    assertThat(each).hasSize(2);
    assertThat(each)
        .extracting(one -> one.node().name())
        .containsExactlyInAnyOrder("top 0", "top 1");
    assertThat(each).extracting(Motion::freedom).containsOnly(Freedom.ALONG_Z);
    Motion both = only(sideFrames("top 0 to top 1"));
    assertThat(both.freedom()).isEqualTo(Freedom.ALONG_Z);
    both.all()
        .forEach(
            (node, motion) ->
                assertThat(motion.translation().z())
                    .isCloseTo(node.name().startsWith("top") ? 1 : 0, within(1e-9)));
    assertThat(sideFrames("top 0 to top 1", "front 0 to top 1")).isInstanceOf(FrameSolution.class);
    assertThat(sideFrames("top 0 to top 1", "front 0 to top 1", "front 1 to top 0"))
        .isInstanceOf(FrameSolution.class);
  }

  /** A box on its floor, pushed hard enough, turns about its far edge, and nothing stops it. */
  @Test
  void boxTips() {
    PlaneFrame box = box();
    assertThat(box.outcome(box.push("top", 30, -100))).isInstanceOf(FrameSolution.class);
    Motion motion = only(box.outcome(box.push("top", 50, -100)));
    assertThat(motion.node().name()).isEqualTo("top");
    assertThat(motion.freedom()).isEqualTo(Freedom.ALONG_X);
    assertThat(motion.amount()).isEqualTo(1);
    assertThat(motion.all().get(box.node("left")).translation().y()).isPositive();
    assertThat(motion.all().get(box.node("right")).translation().y()).isCloseTo(0, within(1e-9));
    assertThat(motion.all().get(box.node("top")).rotation().z()).isNegative();
  }

  private static PlaneFrame box() {
    PlaneFrame box =
        new PlaneFrame()
            .node("left", -500, 0)
            .node("right", 500, 0)
            .node("top", 0, 1200)
            .chain(S1, "left", "top", "right", "left")
            .hold("right", Freedom.ALONG_X);
    return box.support(FrameSupport.contact(box.node("left"), Freedom.ALONG_Y))
        .support(FrameSupport.contact(box.node("right"), Freedom.ALONG_Y));
  }

  /** Pulled up it leaves the floor altogether. */
  @Test
  void boxIsLifted() {
    PlaneFrame box = box();
    Motion motion = only(box.outcome(box.push("top", 0, 1)));
    assertThat(motion.all().get(box.node("top")).translation().y()).isPositive();
  }

  /** A node at which all is pinned may turn; a moment there has no one to take it. */
  @Test
  void turnThatNothingResistsIsToldWhenAMomentAsks() {
    PlaneFrame frame = new PlaneFrame().node("a", 0, 0).node("b", 0, 2000).fix("a");
    frame.beam(BeamEnd.rigid(frame.node("a")), hinge(frame.node("b")), S1);
    assertThat(frame.outcome(frame.push("b", 100, -1000))).isInstanceOf(FrameSolution.class);
    Motion motion =
        only(
            frame.outcome(
                new FrameLoad.OnNode(frame.node("b"), vector(0, 0, 0), vector(0, 0, -5))));
    assertThat(motion.node().name()).isEqualTo("b");
    assertThat(motion.freedom()).isEqualTo(Freedom.ABOUT_Z);
  }

  /** Soft is not loose: a beam in eight hundred short pieces. */
  @Test
  void manyShortPiecesAreNoMechanism() {
    PlaneFrame frame =
        new PlaneFrame().node("a", 0, 0).node("b", 2400, 0).fix("a").beam("a", "b", S1);
    FrameSolution solution =
        (FrameSolution)
            FrameAnalysis.of(frame.model(), 800).firstOrder(loads(frame.push("b", 0, -1000)));
    double exact = -1000 * 2400.0 * 2400 * 2400 / (3 * 11_000 * 11_432_343.75);
    assertThat(frame.motion(solution, "b")[1]).isCloseTo(exact, withinPercentage(0.01));
  }
}
