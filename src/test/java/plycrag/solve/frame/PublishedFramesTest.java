package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.frame.Near.closed;
import static plycrag.solve.frame.Near.printed;
import static plycrag.solve.frame.PlaneFrame.section;
import static plycrag.solve.frame.PlaneFrame.vector;

import org.junit.jupiter.api.Test;

/** Plane frames that others print: structural cases A6 to A9, A13, A16 and A17. */
class PublishedFramesTest {
  private static FrameLoad down(String beam, double line) {
    return new FrameLoad.Spread(beam, vector(0, -line, 0));
  }

  /** A6, CALFEM's manual, exs6; m, N. */
  @Test
  void portal() {
    BeamSection column = section(200e9, 2e-3, 1.6e-5);
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("b", 0, 4)
            .node("c", 6, 4)
            .node("d", 6, 0)
            .fix("a")
            .pin("d")
            .beam("a", "b", column)
            .beam("b", "c", section(200e9, 6e-3, 5.4e-5))
            .beam("c", "d", column);
    FrameSolution solution = frame.solve(frame.push("b", 2000, 0), down("bc", 10_000));
    double[] b = frame.motion(solution, "b");
    double[] c = frame.motion(solution, "c");
    printed(new double[] {1e3 * b[0], 1e4 * b[1], 1e3 * b[2]}, "7.5357; -2.8741; -5.3735");
    printed(new double[] {1e3 * c[0], 1e4 * c[1], 1e3 * c[2]}, "7.5161; -3.1259; 4.6656");
    printed(frame.reaction(solution, "a"), "1926.7601; 28740.8783; 445.2699");
    double[] foot = frame.reaction(solution, "d");
    printed(new double[] {foot[0], foot[1]}, "-3926.8; 31259");
    printed(Math.abs(solution.forces("bc").at(0).momentZ()), "8152.310");
    printed(Math.abs(solution.forces("bc").at(6).momentZ()), "15707.040");
  }

  /** A7, CALFEM's manual, exs7 by its table; m, N. */
  @Test
  void beamOnBars() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 2)
            .node("b", 2, 2)
            .node("c", 4, 2)
            .node("d", 6, 2)
            .node("o", 0, 0)
            .fix("a")
            .fix("o")
            .chain(section(200e9, 4e-3, 5.4e-5), "a", "b", "c", "d")
            .bars(200e9 * 1e-3, "o-b", "o-c");
    FrameSolution solution = frame.solve(down("bc", 10_000), down("cd", 10_000));
    printed(1e4 * frame.motion(solution, "b")[1], "-5.5551");
    printed(1e3 * frame.motion(solution, "c")[1], "-4.5567");
    printed(1e2 * frame.motion(solution, "d")[1], "-1.2990");
    printed(solution.axial("ob"), "-17687.871");
    printed(solution.axial("oc"), "-76243.626");
    printed(frame.reaction(solution, "a"), "-80702; -6604.4; -1403.2");
  }

  private static PlaneFrame squarePortal() {
    return new PlaneFrame()
        .node("a", 0, 0)
        .node("b", 0, 100)
        .node("c", 100, 100)
        .node("d", 100, 0)
        .fix("a")
        .fix("d")
        .chain(section(29e6, 1, 1.0 / 12), "a", "b", "c", "d");
  }

  /** A8, the finite-element suite xc's portal; inch, lb. */
  @Test
  void portalUnderAForceAtMidspan() {
    PlaneFrame frame = squarePortal();
    FrameSolution solution = frame.solve(FrameLoad.on("bc", 50, vector(0, -1000, 0)));
    printed(frame.motion(solution, "b")[2], "-0.08620905");
    printed(Math.abs(frame.reaction(solution, "a")[2]), "4166.458");
    printed(Math.abs(solution.forces("bc").at(0).momentZ()), "8333.229");
    printed(frame.reaction(solution, "a")[0], "124.99688");
  }

  @Test
  void portalUnderAForceAtAQuarter() {
    PlaneFrame frame = squarePortal();
    FrameSolution solution = frame.solve(FrameLoad.on("bc", 25, vector(0, -1000, 0)));
    printed(frame.motion(solution, "b")[0], "1.384851");
    printed(frame.motion(solution, "b")[2], "-0.0924");
    assertThat(frame.motion(solution, "c")[2]).as("printed cut off").isBetween(0.0369, 0.0370);
    printed(Math.abs(frame.reaction(solution, "a")[2]), "2455.577");
    printed(Math.abs(frame.reaction(solution, "d")[2]), "3794.110");
    printed(Math.abs(solution.forces("bc").at(0).momentZ()), "6919.188");
    printed(frame.reaction(solution, "a")[0], "93.74766");
  }

  /** A9, Logan's problem 5.30 by Pynite; inch, kip. */
  @Test
  void gable() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("b", 0, 360)
            .node("c", 180, 480)
            .node("d", 420, 480)
            .node("e", 600, 360)
            .node("f", 600, 0)
            .fix("a")
            .fix("f")
            .chain(section(30_000, 12, 200), "a", "b", "c", "d", "e", "f");
    FrameSolution solution = frame.solve(frame.push("c", 0, -30), frame.push("d", 0, -30));
    printed(frame.reaction(solution, "a"), "11.68768302; 30; -1810.07445547");
    printed(frame.motion(solution, "c")[1], "-6.66675711");
    printed(frame.motion(solution, "c")[2], "-0.03199973");
  }

  /** A13, frame3dd's exA, case 1: a truss with rigid joints whose support moves; inch, kip. */
  @Test
  void trussWhoseSupportMoves() {
    PlaneFrame frame = new PlaneFrame();
    for (int i = 0; i < 7; i++) {
      frame.node(Integer.toString(i + 1), 120 * i, 0);
    }
    for (int i = 0; i < 5; i++) {
      frame.node(Integer.toString(i + 8), 120 * (i + 1), 120);
    }
    BeamSection section = section(29_000, 10, 0.01);
    frame
        .chain(section, "1", "2", "3", "4", "5", "6", "7")
        .chain(section, "8", "9", "10", "11", "12");
    for (String pair : "2-8 3-9 4-10 5-11 6-12 1-8 2-9 4-9 4-11 6-11 7-12".split(" ", -1)) {
      frame.chain(section, pair.split("-", -1));
    }
    frame.pin("1").hold("7", Freedom.ALONG_Y).hold("8", Freedom.ALONG_X);
    FrameSolution solution =
        frame.solve(
            frame.push("2", 0, -10),
            frame.push("3", 0, -20),
            frame.push("4", 0, -20),
            frame.push("5", 0, -10),
            frame.push("6", 0, -20),
            new FrameLoad.Settlement(frame.node("8"), Freedom.ALONG_X, 0.1));
    double[] first = frame.reaction(solution, "1");
    printed(new double[] {first[0], first[1]}, "11.940676; 40.323446");
    printed(frame.reaction(solution, "7")[1], "39.676554");
    printed(frame.reaction(solution, "8")[0], "-11.941");
    printed(frame.motion(solution, "4")[0], "0.060329");
    printed(frame.motion(solution, "4")[1], "-0.31588891");
    printed(solution.forces("18").at(0).normal(), "-57.026");
    printed(solution.forces("910").at(0).normal(), "-69.030");
  }

  /** A16, anaStruct's example 3: a foot that turns on a spring; m, kN. */
  @Test
  void footOnASpring() {
    PlaneFrame frame =
        new PlaneFrame()
            .node("a", 0, 0)
            .node("b", 0, 5)
            .node("c", 5, 5)
            .node("d", 5, 0)
            .fix("a")
            .pin("d")
            .chain(section(1, 15_000, 5000), "a", "b", "c", "d");
    frame.support(FrameSupport.spring(frame.node("d"), Freedom.ABOUT_Z, 4000));
    FrameSolution solution = frame.solve(frame.push("b", 30, 0), down("bc", 10));
    double[] c = frame.motion(solution, "c");
    printed(new double[] {c[0], c[1], Math.abs(c[2])}, "0.0575402; -0.0128738; 0.0021605");
    closed(frame.reaction(solution, "d")[2], -4000 * frame.motion(solution, "d")[2]);
  }

  /** A16, example 4.15 of McGuire, Gallagher and Ziemian by Pynite; inch, kip. */
  @Test
  void beamOnSprings() {
    PlaneFrame frame = new PlaneFrame();
    for (int i = 0; i < 17; i++) {
      frame.node("n" + i, 15 * i, 0);
      if (i > 0) {
        frame.beam("n" + (i - 1), "n" + i, section(29_000, 10.3, 128.5));
      }
      if (i > 0 && i < 16) {
        frame.support(FrameSupport.spring(frame.node("n" + i), Freedom.ALONG_Y, 22.5));
      }
    }
    frame.pin("n0").hold("n16", Freedom.ALONG_Y);
    FrameSolution solution = frame.solve(frame.push("n8", 0, -40));
    printed(solution.forces("n7n8").at(15).momentZ(), "546.637");
    printed(frame.motion(solution, "n8")[1], "-0.246268");
  }

  /** A17, Kassimali's example 13.14: supports that settle; inch, kip. The book rounds early. */
  @Test
  void supportsThatSettle() {
    PlaneFrame frame = new PlaneFrame();
    String[] names = {"a", "b", "c", "d"};
    for (int i = 0; i < names.length; i++) {
      frame.node(names[i], 240 * i, 0).hold(names[i], Freedom.ALONG_Y);
    }
    frame.hold("a", Freedom.ALONG_X).chain(section(29_000, 20, 7800), names);
    double line = 2.0 / 12;
    FrameSolution solution =
        frame.solve(
            down("ab", line),
            down("bc", line),
            down("cd", line),
            new FrameLoad.Settlement(frame.node("b"), Freedom.ALONG_Y, -0.625),
            new FrameLoad.Settlement(frame.node("c"), Freedom.ALONG_Y, -1.5),
            new FrameLoad.Settlement(frame.node("d"), Freedom.ALONG_Y, -0.75));
    String[] digits = {"-1.1810", "122.5417", "-61.5404", "60.1797"};
    double[] book = {-1.098, 122.373, -61.451, 60.176};
    for (int i = 0; i < names.length; i++) {
      printed(frame.reaction(solution, names[i])[1], digits[i]);
      assertThat(frame.reaction(solution, names[i])[1]).isCloseTo(book[i], within(0.2));
    }
  }
}
