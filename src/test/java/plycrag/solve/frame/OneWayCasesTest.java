package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.frame.Near.closed;
import static plycrag.solve.frame.Near.printed;
import static plycrag.solve.frame.PlaneFrame.hinge;
import static plycrag.solve.frame.PlaneFrame.section;
import static plycrag.solve.frame.PlaneFrame.vector;
import static plycrag.solve.frame.Timber.S1;
import static plycrag.solve.frame.Timber.S2;

import org.junit.jupiter.api.Test;

/** What lifts off and what goes slack: structural cases A19 to A21. */
class OneWayCasesTest {
  private static PlaneFrame onThree(boolean oneWay) {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("b", 2000, 0)
            .node("c", 4000, 0)
            .chain(S1, "a", "b", "c")
            .hold("a", Freedom.ALONG_X);
    for (String name : new String[] {"a", "b", "c"}) {
      if (oneWay) {
        frame.support(FrameSupport.contact(frame.node(name), Freedom.ALONG_Y));
      } else {
        frame.hold(name, Freedom.ALONG_Y);
      }
    }
    return frame;
  }

  private static void rests(
      boolean oneWay, double force, double line, double a, double b, double c) {
    PlaneFrame frame = onThree(oneWay);
    FrameSolution solution = solve(frame, force, line);
    closed(frame.reaction(solution, "a")[1], a);
    closed(frame.reaction(solution, "b")[1], b);
    closed(frame.reaction(solution, "c")[1], c);
    assertThat(solution.slack()).hasSize(c == 0 ? 1 : 0);
  }

  private static FrameSolution solve(PlaneFrame frame, double force, double line) {
    return frame.solve(
        FrameLoad.on("ab", 1000, vector(0, -force, 0)),
        new FrameLoad.Spread("ab", vector(0, -line, 0)),
        new FrameLoad.Spread("bc", vector(0, -line, 0)));
  }

  /** A19: three-moment equation, and a beam with an overhang once it has lifted. */
  @Test
  void beamLiftsOff() {
    rests(false, 1000, 0, 406.25, 687.5, -93.75);
    rests(true, 1000, 0, 500, 500, 0);
    rests(false, 1000, 0.06, 451.25, 837.5, -48.75);
    rests(true, 1000, 0.06, 500, 740, 0);
    rests(true, 400, 0.06, 207.5, 425, 7.5);
  }

  @Test
  void itsEndRises() {
    PlaneFrame frame = onThree(true);
    FrameSolution bare = solve(frame, 1000, 0);
    printed(bare.forces("ab").motion(1000).translation().y(), "-1.325320");
    printed(frame.motion(bare, "c")[1], "3.975960");
    printed(frame.motion(solve(frame, 1000, 0.06), "c")[1], "2.067499");
    assertThat(bare.slack()).containsExactly("c ALONG_Y");
  }

  private static PlaneFrame leaning(boolean oneWay) {
    PlaneFrame frame =
        new PlaneFrame()
            .node("A", 0, 0)
            .node("B", 900, 0)
            .node("C", 2100, 0)
            .node("M", 1571.483028, 1440)
            .node("T", 2019.138380, 2400)
            .hold("A", Freedom.ALONG_X)
            .chain(S1, "A", "B", "C")
            .chain(S1, "M", "T");
    frame.beam(hinge(frame.node("B")), BeamEnd.rigid(frame.node("M")), S1);
    frame.beam(hinge(frame.node("A")), hinge(frame.node("M")), S2);
    for (String name : new String[] {"A", "B", "C"}) {
      if (oneWay) {
        frame.support(FrameSupport.contact(frame.node(name), Freedom.ALONG_Y));
      } else {
        frame.hold(name, Freedom.ALONG_Y);
      }
    }
    return frame;
  }

  private static FrameSolution solve(PlaneFrame frame) {
    return frame.solve(
        frame.push("T", 240, -1600), frame.push("M", 0, -300), frame.push("A", 0, -500));
  }

  /** A20: the rear end of a base rail rises under a leaning wall. */
  @Test
  void rearOfALeaningFrameRises() {
    PlaneFrame held = leaning(false);
    printed(held.reaction(solve(held), "A")[1], "-2353.407");
    PlaneFrame frame = leaning(true);
    FrameSolution solution = solve(frame);
    closed(frame.reaction(solution, "A")[1], 0);
    printed(frame.reaction(solution, "B")[1], "634.9447");
    printed(frame.reaction(solution, "C")[1], "1765.0553");
    printed(frame.motion(solution, "A")[1], "10.6109");
    printed(frame.motion(solution, "T")[0], "35.8849");
    printed(frame.motion(solution, "T")[1], "-16.9070");
    printed(solution.forces("AM").at(0).normal(), "4223.575");
    printed(Math.abs(solution.forces("BC").at(0).momentZ()), "2118066");
    printed(Math.abs(solution.forces("MT").at(0).momentZ()), "946649");
  }

  private static PlaneFrame ties(Acting acting) {
    return new PlaneFrame()
        .node("a", 0, 0)
        .node("u", 0, 10)
        .node("l", 0, -10)
        .node("b", 100, 0)
        .fix("a")
        .fix("u")
        .fix("l")
        .bar("a", "b", 29_000 * 1.94, Acting.BOTH_WAYS)
        .bar("u", "b", 29_000 * 1.94, acting)
        .bar("l", "b", 29_000 * 1.94, acting);
  }

  /** A21, Pynite's test of members that only pull; inch, kip. */
  @Test
  void tieGoesSlack() {
    PlaneFrame frame = ties(Acting.POSITIVE_ONLY);
    FrameSolution solution = frame.solve(frame.push("b", 0, -10));
    printed(solution.axial("ub"), "100.499");
    closed(solution.axial("ab"), -100);
    closed(solution.axial("lb"), 0);
    printed(frame.motion(solution, "b")[1], "-3.581652");
    assertThat(solution.slack()).containsExactly("lb");
    PlaneFrame both = ties(Acting.BOTH_WAYS);
    FrameSolution whole = both.solve(both.push("b", 0, -10));
    printed(whole.axial("ub"), "50.249378");
    printed(whole.axial("lb"), "-50.249378");
  }

  private static PlaneFrame braced(Acting acting) {
    BeamSection column = section(29_000, 9.71, 171);
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("b", 0, 144)
            .node("c", 180, 144)
            .node("d", 180, 0)
            .pin("a")
            .pin("d")
            .beam("a", "b", column)
            .beam("c", "d", column);
    frame.beam(hinge(frame.node("b")), hinge(frame.node("c")), section(29_000, 7.08, 82.7));
    return frame.bar("a", "c", 29_000 * 1.94, acting).bar("d", "b", 29_000 * 1.94, acting);
  }

  /** A21, Pynite's frame with crossed ties; inch, kip. The beam is its W8×24. */
  @Test
  void oneOfCrossedTiesGoesSlack() {
    PlaneFrame frame = braced(Acting.POSITIVE_ONLY);
    FrameSolution solution = frame.solve(frame.push("b", 25, 0), frame.push("c", 25, 0));
    printed(solution.axial("ac"), "64.031242");
    closed(solution.axial("db"), 0);
    closed(frame.reaction(solution, "a")[0], -50);
    closed(frame.reaction(solution, "a")[1], -40);
    assertThat(frame.reaction(solution, "d")[0]).isCloseTo(0, within(1e-9));
    closed(frame.reaction(solution, "d")[1], 40);
    printed(frame.motion(solution, "b")[0], "0.374257");
    printed(frame.motion(solution, "c")[0], "0.352340");
    PlaneFrame both = braced(Acting.BOTH_WAYS);
    FrameSolution whole = both.solve(both.push("b", 25, 0), both.push("c", 25, 0));
    printed(both.motion(whole, "c")[0], "0.176170");
  }
}
