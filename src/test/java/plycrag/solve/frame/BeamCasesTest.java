package plycrag.solve.frame;

import static plycrag.solve.frame.Near.closed;
import static plycrag.solve.frame.Near.printed;
import static plycrag.solve.frame.PlaneFrame.hinge;
import static plycrag.solve.frame.PlaneFrame.loads;
import static plycrag.solve.frame.PlaneFrame.section;
import static plycrag.solve.frame.PlaneFrame.vector;
import static plycrag.solve.frame.Timber.ELASTICITY;
import static plycrag.solve.frame.Timber.S1;
import static plycrag.solve.frame.Timber.S2;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Single beams against closed forms: structural cases A1 to A5, A15 and A18. What is asserted is
 * told by {@link Near}: {@code closed} that a result is the closed form's, {@code printed} that it
 * has the digits of a publication.
 */
class BeamCasesTest {
  private static final double EI = ELASTICITY * 11_432_343.75;

  private static PlaneFrame single(double length, BeamSection section) {
    return new PlaneFrame().node("a", 0, 0).node("b", length, 0).beam("a", "b", section);
  }

  private static FrameLoad down(String beam, double line) {
    return new FrameLoad.Spread(beam, vector(0, -line, 0));
  }

  private static FrameSolution cantilever(BeamSection section) {
    FrameNode root = new FrameNode("root", vector(0, 0, 0));
    FrameNode tip = new FrameNode("tip", vector(2000, 0, 0));
    Beam beam = new Beam("beam", BeamEnd.rigid(root), BeamEnd.rigid(tip), vector(0, 1, 0), section);
    FrameLoad load = new FrameLoad.OnNode(tip, vector(2000, -1000, 300), vector(50_000, 0, 0));
    return (FrameSolution)
        FrameAnalysis.of(FrameModel.of(List.of(beam), FrameSupport.fixed(root)))
            .firstOrder(loads(load));
  }

  /** A1: P L³ / 3EI, T L / GJ and their like. */
  @Test
  void cantileverInSpace() {
    FrameSolution solution = cantilever(S1);
    FrameNode tip = new FrameNode("tip", vector(2000, 0, 0));
    NodeMotion moved = solution.motion(tip);
    closed(moved.translation().x(), 2000 * 2000 / (ELASTICITY * 6525));
    closed(moved.translation().y(), -1000 * 8e9 / (3 * EI));
    closed(moved.translation().z(), 300 * 8e9 / (3 * ELASTICITY * 1_101_093.75));
    printed(
        new double[] {moved.translation().x(), moved.translation().y(), moved.translation().z()},
        "0.0557297; -21.2051219; 66.0500277");
    printed(
        new double[] {moved.rotation().x(), moved.rotation().y(), moved.rotation().z()},
        "0.0409056; -0.0495375; -0.0159038");
    NodeForce root = solution.reactions().get(new FrameNode("root", vector(0, 0, 0)));
    closed(root.force().x(), -2000);
    closed(root.force().y(), 1000);
    closed(root.force().z(), -300);
    closed(root.moment().x(), -50_000);
    closed(root.moment().y(), 600_000);
    closed(root.moment().z(), 2_000_000);
  }

  /** A1 with the shear area of a rectangle: P L / G A' more. */
  @Test
  void cantileverThatShearBends() {
    double moved =
        cantilever(S1.shearing(5.0 / 6))
            .motion(new FrameNode("tip", vector(2000, 0, 0)))
            .translation()
            .y();
    printed(moved, "-21.738189");
    closed(moved, -1000 * 8e9 / (3 * EI) - 1000 * 2000 / (690 * 6525 * 5.0 / 6));
  }

  /** A2: a beam held at both ends, with a force at a third. */
  @Test
  void heldAtBothEndsUnderAForce() {
    PlaneFrame frame = single(3000, S1).fix("a").fix("b");
    FrameSolution solution = frame.solve(FrameLoad.on("ab", 1000, vector(0, -1000, 0)));
    printed(frame.reaction(solution, "a"), "0; 740.7407; 444444.4");
    printed(frame.reaction(solution, "b"), "0; 259.2593; -222222.2");
    closed(frame.reaction(solution, "a")[1], 1000 * 20.0 / 27);
    MemberForces forces = solution.forces("ab");
    printed(forces.motion(1000).translation().y(), "-0.785375");
    closed(forces.motion(1000).translation().y(), -1000 * 1e9 * 8e9 / (3 * EI * 27e9));
    closed(forces.greatest(SectionForces::momentZ).forces().momentZ(), -12e6 / 27);
    closed(forces.at(1000).momentZ(), 2 * 1000 * 1e6 * 4e6 / 27e9);
  }

  /** A2 with an even load. */
  @Test
  void heldAtBothEndsUnderAnEvenLoad() {
    PlaneFrame frame = single(3000, S1).fix("a").fix("b");
    FrameSolution solution = frame.solve(down("ab", 1));
    printed(frame.reaction(solution, "a"), "0; 1500; 750000");
    MemberForces forces = solution.forces("ab");
    closed(forces.at(1500).momentZ(), 9e6 / 24);
    printed(forces.motion(1500).translation().y(), "-1.677358");
    closed(forces.motion(1500).translation().y(), -81e12 / (384 * EI));
  }

  /** A3: 5/8 and 3/8 of the load. */
  @Test
  void propped() {
    PlaneFrame frame = single(3000, S1).fix("a").hold("b", Freedom.ALONG_Y);
    FrameSolution solution = frame.solve(down("ab", 1));
    closed(frame.reaction(solution, "a")[1], 1875);
    closed(frame.reaction(solution, "a")[2], 1_125_000);
    closed(frame.reaction(solution, "b")[1], 1125);
    printed(frame.motion(solution, "b")[2], "0.00447296");
    closed(frame.motion(solution, "b")[2], 27e9 / (48 * EI));
    MemberForces.Station field = solution.forces("ab").stations().get(1);
    closed(field.at(), 1875);
    closed(field.forces().momentZ(), 9.0 / 128 * 9e6);
  }

  /** A4, anaStruct's example 6: the same by a hinge at the end of the beam. */
  @Test
  void hingedAtOneEnd() {
    PlaneFrame metres = new PlaneFrame().node("a", 0, 0).node("b", 7, 0).fix("a").fix("b");
    metres.beam(BeamEnd.rigid(metres.node("a")), hinge(metres.node("b")), section(1, 1e6, 1));
    closed(metres.reaction(metres.solve(down("ab", 10)), "a")[2], 61.25);

    PlaneFrame frame = new PlaneFrame().node("a", 0, 0).node("b", 3000, 0).fix("a").fix("b");
    frame.beam(BeamEnd.rigid(frame.node("a")), hinge(frame.node("b")), S1);
    FrameSolution solution = frame.solve(down("ab", 1));
    closed(frame.reaction(solution, "a")[2], 1_125_000);
    closed(frame.reaction(solution, "b")[1], 1125);
    closed(frame.reaction(solution, "b")[2], 0);
    closed(solution.forces("ab").at(3000).momentZ() / 1_125_000, 0);
  }

  /** A5: a hinge in a beam of two spans. */
  @Test
  void hingedBetweenSpans() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("h", 2000, 0)
            .node("r", 5000, 0)
            .fix("a")
            .hold("r", Freedom.ALONG_Y)
            .beam("a", "h", S1);
    frame.beam(hinge(frame.node("h")), BeamEnd.rigid(frame.node("r")), S1);
    FrameSolution solution = frame.solve(FrameLoad.on("hr", 1500, vector(0, -1000, 0)));
    closed(frame.reaction(solution, "r")[1], 500);
    closed(frame.reaction(solution, "a")[1], 500);
    closed(frame.reaction(solution, "a")[2], 1_000_000);
    closed(frame.motion(solution, "h")[1], -500 * 8e9 / (3 * EI));
    printed(frame.motion(solution, "h")[1], "-10.602561");
    printed(solution.forces("hr").motion(1500).translation().y(), "-9.774236");
  }

  /** A15, AFNOR SSLL02/89: bending and shear. */
  @Test
  void simpleBeamThatShearBends() {
    double area = 31e-4;
    BeamSection section =
        new BeamSection(2e11, 2e11 / 2.6, area, 2810e-8, 2810e-8, 1e-8, area / 2.42, area / 2.42);
    PlaneFrame frame = single(1.44, section).pin("a").hold("b", Freedom.ALONG_Y);
    double moved = frame.solve(down("ab", 1e5)).forces("ab").motion(0.72).translation().y();
    printed(moved * 1e3, "-1.2592597");
  }

  /** A18: a post whose load stands beside its top. */
  @Test
  void armsTurnWhatTheyHold() {
    PlaneFrame frame = new PlaneFrame().node("a", 0, 0).node("b", 95, 2000).fix("a");
    frame.beam(
        BeamEnd.rigid(frame.node("a")),
        BeamEnd.rigid(new Attachment(frame.node("b"), vector(-95, 0, 0))),
        S2);
    FrameSolution solution = frame.solve(frame.push("b", 100, -1000));
    printed(frame.motion(solution, "b"), "12.912328; -1.090126; -0.0110273");
    closed(frame.reaction(solution, "a")[2], 1000 * 95 + 100 * 2000);
  }

  /** A18: a beam between arms, one of whose ends sinks, and under an even load. */
  @Test
  void armsShortenSpans() {
    PlaneFrame frame = new PlaneFrame().node("a", 0, 0).node("b", 3000, 0).fix("a").fix("b");
    frame.beam(
        BeamEnd.rigid(new Attachment(frame.node("a"), vector(200, 0, 0))),
        BeamEnd.rigid(new Attachment(frame.node("b"), vector(-300, 0, 0))),
        S1);
    FrameSolution sunk =
        frame.solve(new FrameLoad.Settlement(frame.node("b"), Freedom.ALONG_Y, -5));
    printed(frame.reaction(sunk, "a"), "0; 482.9022; 700208.19");
    printed(frame.reaction(sunk, "b"), "0; -482.9022; 748498.41");
    closed(frame.reaction(sunk, "a")[1], 12 * EI * 5 / (2500.0 * 2500 * 2500));
    FrameSolution loaded = frame.solve(down("ab", 1));
    printed(frame.reaction(loaded, "a"), "0; 1250; 770833.33");
    printed(frame.reaction(loaded, "b"), "0; 1250; -895833.33");
  }
}
