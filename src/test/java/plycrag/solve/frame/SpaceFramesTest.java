package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plycrag.solve.frame.Near.printed;
import static plycrag.solve.frame.PlaneFrame.loads;
import static plycrag.solve.frame.PlaneFrame.vector;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import plycrag.geometry.Vector3;

/** Frames in space that others print: structural cases A10 to A12, A14 and A26. */
class SpaceFramesTest {
  private static double[] values(Vector3 one, Vector3 other) {
    return new double[] {one.x(), one.y(), one.z(), other.x(), other.y(), other.z()};
  }

  private static double[] values(NodeMotion motion) {
    return values(motion.translation(), motion.rotation());
  }

  private static double[] values(NodeForce force) {
    return values(force.force(), force.moment());
  }

  private static double[] times(double[] values, double factor) {
    double[] product = values.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] *= factor;
    }
    return product;
  }

  private static FrameNode node(String name, double x, double y, double z) {
    return new FrameNode(name, vector(x, y, z));
  }

  private static Beam beam(FrameNode start, FrameNode end, Vector3 reference, BeamSection section) {
    return new Beam(
        start.name() + end.name(), BeamEnd.rigid(start), BeamEnd.rigid(end), reference, section);
  }

  private static FrameSolution first(FrameModel model, FrameLoad... loads) {
    return (FrameSolution) FrameAnalysis.of(model).firstOrder(loads(loads));
  }

  /** A10, Logan's example 5.8 by Pynite; inch, kip. */
  @Test
  void threeBeamsInACorner() {
    FrameNode one = node("1", 0, 0, 0);
    List<FrameNode> ends =
        List.of(node("2", -100, 0, 0), node("3", 0, 0, -100), node("4", 0, -100, 0));
    BeamSection section = BeamSection.bending(30_000, 10_000, 10, 100, 100, 50);
    List<Beam> beams = ends.stream().map(end -> beam(end, one, vector(1, 2, 3), section)).toList();
    List<FrameSupport> supports =
        ends.stream().flatMap(end -> FrameSupport.fixed(end).stream()).toList();
    FrameSolution solution =
        first(
            FrameModel.of(beams, supports),
            new FrameLoad.OnNode(one, vector(0, -50, 0), vector(-1000, 0, 0)));
    printed(
        times(values(solution.motion(one)), 1e5),
        "7.09825755; -1399.51349; -235.188934; -399.609044; 1.78006916; -10.3342904");
    Vector3 fourth = solution.reactions().get(ends.get(2)).force();
    printed(fourth.x(), "0.18346");
    printed(fourth.y(), "41.98540");
    printed(fourth.z(), "-7.10829");
  }

  /** Kassimali's example 8.4, turned by some rotation. */
  private record Rolled(FrameNode one, List<FrameNode> ends, FrameSolution solution) {
    static Rolled by(UnaryOperator<Vector3> turn) {
      FrameNode one = new FrameNode("1", turn.apply(vector(0, 0, 0)));
      List<FrameNode> ends =
          List.of(
              new FrameNode("2", turn.apply(vector(-240, 0, 0))),
              new FrameNode("3", turn.apply(vector(0, -240, 0))),
              new FrameNode("4", turn.apply(vector(0, 0, -240))));
      List<Vector3> sides =
          List.of(vector(0, 1, 0), vector(0, 0, 1), vector(-0.5, Math.sqrt(3) / 2, 0));
      BeamSection section = BeamSection.bending(29_000, 11_500, 32.9, 236, 716, 15.1);
      List<Beam> beams = new ArrayList<>();
      List<FrameSupport> supports = new ArrayList<>();
      for (int i = 0; i < ends.size(); i++) {
        beams.add(beam(ends.get(i), one, turn.apply(sides.get(i)), section));
        supports.addAll(FrameSupport.fixed(ends.get(i)));
      }
      FrameSolution solution =
          first(
              FrameModel.of(beams, supports),
              new FrameLoad.Spread("21", turn.apply(vector(0, -0.25, 0))),
              new FrameLoad.OnNode(one, vector(0, 0, 0), turn.apply(vector(-1800, 0, 1800))));
      return new Rolled(one, ends, solution);
    }
  }

  /** A11, by beamOS; inch, kip. */
  @Test
  void threeBeamsThatAreRolled() {
    Rolled frame = Rolled.by(same -> same);
    printed(
        times(values(frame.solution.motion(frame.one)), 1e3),
        "-1.3522447; -2.7965317; -1.8119801; -3.0021088; 1.0569107; 6.4985802");
    String[] reactions = {
      "5.375736; 44.106293; -0.742724; 2.172151; 58.987351; 2330.519663",
      "-4.624913; 11.117379; -6.460651; -515.54573; -0.764719; 369.671654",
      "-0.750823; 4.776328; 7.203376; -383.501559; -60.166419; -4.701994"
    };
    for (int i = 0; i < reactions.length; i++) {
      printed(values(frame.solution.reactions().get(frame.ends.get(i))), reactions[i]);
    }
  }

  /** By 1 radian about (1, 2, 3), after O. Rodrigues. */
  private static Vector3 turned(Vector3 one) {
    Vector3 axis = vector(1, 2, 3).unit();
    return one.times(Math.cos(1))
        .plus(axis.cross(one).times(Math.sin(1)))
        .plus(axis.times(axis.dot(one) * (1 - Math.cos(1))));
  }

  /** A26: the same as A11 in axes that are turned. */
  @Test
  void turnsWithItsAxes() {
    Rolled frame = Rolled.by(same -> same);
    Rolled other = Rolled.by(SpaceFramesTest::turned);
    NodeMotion motion = frame.solution.motion(frame.one);
    near(other.solution.motion(other.one).translation(), turned(motion.translation()), 1e-15);
    near(other.solution.motion(other.one).rotation(), turned(motion.rotation()), 1e-15);
    for (int i = 0; i < 3; i++) {
      NodeForce force = frame.solution.reactions().get(frame.ends.get(i));
      NodeForce same = other.solution.reactions().get(other.ends.get(i));
      near(same.force(), turned(force.force()), 1e-10);
      near(same.moment(), turned(force.moment()), 1e-10);
    }
  }

  private static void near(Vector3 actual, Vector3 expected, double distance) {
    assertThat(actual.minus(expected).length()).isCloseTo(0, within(distance));
  }

  /** A12, frame3dd's exB, case 1: shear bends, and axial forces act where nodes have gone. */
  @Test
  void pyramid() {
    FrameNode top = node("1", 0, 0, 1000);
    List<FrameNode> feet =
        List.of(
            node("2", -1200, -900, 0),
            node("3", 1200, -900, 0),
            node("4", 1200, 900, 0),
            node("5", -1200, 900, 0));
    BeamSection section = new BeamSection(200_000, 79_300, 36, 492, 492, 1000, 20, 20);
    Vector3 up = vector(0, 0, 1);
    List<Beam> beams =
        List.of(
            beam(feet.get(0), top, up, section),
            beam(top, feet.get(1), up, section),
            beam(top, feet.get(2), up, section),
            beam(feet.get(3), top, up, section));
    List<FrameLoad> loads = new ArrayList<>();
    beams.forEach(one -> loads.add(new FrameLoad.Spread(one.name(), up.times(-2.771269e-3))));
    loads.add(FrameLoad.on(top, vector(100, -200, -100)));
    FrameAnalysis analysis =
        FrameAnalysis.of(
            FrameModel.of(
                beams, feet.stream().flatMap(one -> FrameSupport.fixed(one).stream()).toList()));
    LoadCase all = new LoadCase("all", loads);
    FrameSolution solution = (FrameSolution) analysis.secondOrder(all);
    Vector3 moved = solution.motion(top).translation();
    printed(moved.x(), "0.01412727");
    printed(moved.y(), "-0.05022855");
    printed(moved.z(), "-0.02237375");
    printed(
        ((FrameSolution) analysis.firstOrder(all)).motion(top).translation().y(), "-0.05022766");
    Vector3 foot = solution.reactions().get(feet.get(0)).force();
    printed(foot.x(), "74.653");
    printed(foot.y(), "55.994");
    printed(foot.z(), "64.715");
  }

  /** A14, Bedford and Fowler's problem 6.64 by Pynite; determinate; m, kN. */
  @Test
  void determinateTrussInSpace() {
    FrameNode a = node("A", 1.1, -0.4, 0);
    FrameNode b = node("B", 1, 0, 0);
    FrameNode c = node("C", 0, 0, 0.6);
    FrameNode d = node("D", 0, 0, -0.4);
    FrameNode e = node("E", 0, 0.8, 0);
    List<Bar> bars =
        List.of(
            Bar.between("AB", a, b, 1e5),
            Bar.between("AC", a, c, 2e5),
            Bar.between("AD", a, d, 3e5),
            Bar.between("BC", b, c, 4e5),
            Bar.between("BD", b, d, 5e5),
            Bar.between("BE", b, e, 6e5));
    List<FrameSupport> supports = new ArrayList<>();
    List.of(c, d, e).forEach(one -> supports.addAll(FrameSupport.pinned(one)));
    FrameSolution solution =
        first(
            new FrameModel(List.of(), bars, List.of(), supports),
            FrameLoad.on(a, vector(10, 60, 20)));
    String[] digits = {
      "-72.154348", "-13.152946", "43.292609", "32.653331", "45.235384", "-112.054674"
    };
    for (int i = 0; i < digits.length; i++) {
      printed(solution.axial(bars.get(i).name()), digits[i]);
    }
  }
}
