package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import plycrag.Repeatable;
import plycrag.geometry.Vector3;

/** What holds for any frame. */
@AddLifecycleHook(Repeatable.class)
class FramePropertiesTest {
  private static final Vector3 ZERO = new Vector3(0, 0, 0);
  private static final UnaryOperator<Vector3> SAME = UnaryOperator.identity();

  private static FrameSolution solve(RandomFrame frame) {
    return (FrameSolution) FrameAnalysis.of(frame.model()).firstOrder(frame.loadCase());
  }

  /** To a part of the greatest of its kind in the frame. */
  private static void near(Vector3 actual, Vector3 expected, double size) {
    assertThat(actual.minus(expected).length()).isCloseTo(0, within(1e-8 * size));
  }

  private static double moved(RandomFrame frame, FrameSolution solution) {
    return frame.nodes().stream()
        .mapToDouble(node -> solution.motion(node).translation().length())
        .max()
        .orElseThrow();
  }

  private static double turned(RandomFrame frame, FrameSolution solution) {
    return frame.nodes().stream()
        .mapToDouble(node -> solution.motion(node).rotation().length())
        .max()
        .orElseThrow();
  }

  /** Supports hold just what loads ask for. */
  @Property(tries = 200)
  void loadsAndReactionsBalance(@ForAll long seed) {
    RandomFrame frame = new RandomFrame(seed, SAME, false);
    Vector3 force = ZERO;
    Vector3 moment = ZERO;
    for (FrameLoad load : frame.loads()) {
      force = force.plus(frame.force(load));
      moment = moment.plus(frame.moment(load));
    }
    double size = moment.length() + 1e6;
    for (var one : solve(frame).reactions().entrySet()) {
      force = force.plus(one.getValue().force());
      moment =
          moment
              .plus(one.getValue().moment())
              .plus(one.getKey().place().cross(one.getValue().force()));
    }
    near(force, ZERO, 1e5);
    near(moment, ZERO, size);
  }

  /** So do the forces in members at a node that only they hold. */
  @Property(tries = 100)
  void membersBalanceAtANode(@ForAll long seed) {
    RandomFrame frame = new RandomFrame(seed, SAME, false);
    FrameSolution solution = solve(frame);
    FrameNode node = frame.nodes().get(frame.nodes().size() - 1);
    Vector3 force = ZERO;
    for (FrameLoad load : frame.loads()) {
      if (load instanceof FrameLoad.OnNode one && one.node().equals(node)) {
        force = force.plus(one.force());
      }
    }
    for (Beam beam : frame.model().beams()) {
      MemberForces forces = solution.forces(beam.name());
      if (beam.start().at().node().equals(node)) {
        force = force.plus(outward(beam, forces.stations().get(0).forces()));
      }
      if (beam.end().at().node().equals(node)) {
        List<MemberForces.Station> stations = forces.stations();
        force = force.minus(outward(beam, stations.get(stations.size() - 1).forces()));
      }
    }
    for (Bar bar : frame.model().bars()) {
      Vector3 along = bar.end().place().minus(bar.start().place()).unit();
      Vector3 pull = along.times(solution.axial(bar.name()));
      force = bar.start().node().equals(node) ? force.plus(pull) : force;
      force = bar.end().node().equals(node) ? force.minus(pull) : force;
    }
    near(force, ZERO, 1e5);
  }

  private static Vector3 outward(Beam beam, SectionForces forces) {
    return beam.axes().outward(new Vector3(forces.normal(), forces.shearY(), forces.shearZ()));
  }

  /** Turned with its loads, a frame moves as before, turned. */
  @Property(tries = 100)
  void turnsWithItsAxes(
      @ForAll long seed,
      @ForAll @DoubleRange(min = -1, max = 1) double x,
      @ForAll @DoubleRange(min = -1, max = 1) double y,
      @ForAll @DoubleRange(min = -1, max = 1) double z) {
    UnaryOperator<Vector3> turn = quaternion(x, y, z);
    same(new RandomFrame(seed, SAME, false), new RandomFrame(seed, turn, false), turn, 1);
  }

  private static UnaryOperator<Vector3> quaternion(double x, double y, double z) {
    Vector3 axis = new Vector3(x, y, z);
    double size = 1 + axis.dot(axis);
    return one ->
        one.plus(axis.cross(one).times(2 / size)).plus(axis.cross(axis.cross(one)).times(2 / size));
  }

  /** In a mirror it moves as in a mirror, and turns the other way. */
  @Property(tries = 100)
  void mirroredFrameMirrors(@ForAll long seed) {
    UnaryOperator<Vector3> mirror = one -> new Vector3(-one.x(), one.y(), one.z());
    same(new RandomFrame(seed, SAME, false), new RandomFrame(seed, mirror, true), mirror, -1);
  }

  private static void same(
      RandomFrame frame, RandomFrame other, UnaryOperator<Vector3> turn, int hand) {
    FrameSolution one = solve(frame);
    FrameSolution two = solve(other);
    for (int i = 0; i < frame.nodes().size(); i++) {
      NodeMotion motion = one.motion(frame.nodes().get(i));
      NodeMotion turned = two.motion(other.nodes().get(i));
      near(turned.translation(), turn.apply(motion.translation()), moved(frame, one));
      near(turned.rotation(), turn.apply(motion.rotation()).times(hand), turned(frame, one));
    }
    double size = 1e4 + one.reactions().get(frame.nodes().get(0)).force().length();
    for (Beam beam : frame.model().beams()) {
      List<MemberForces.Station> here = one.forces(beam.name()).stations();
      List<MemberForces.Station> there = two.forces(beam.name()).stations();
      SectionForces first = here.get(0).forces();
      SectionForces same = there.get(0).forces();
      assertThat(same.normal()).isCloseTo(first.normal(), within(1e-8 * size));
      assertThat(Math.abs(same.momentZ()))
          .isCloseTo(Math.abs(first.momentZ()), within(1e-5 * size));
      assertThat(Math.abs(same.momentY()))
          .isCloseTo(Math.abs(first.momentY()), within(1e-5 * size));
    }
  }

  /** Loads together do what they do one by one. */
  @Property(tries = 100)
  void loadsAddUp(@ForAll long seed) {
    RandomFrame frame = new RandomFrame(seed, SAME, false);
    FrameAnalysis analysis = FrameAnalysis.of(frame.model());
    List<LoadCase> each =
        frame.loads().stream().map(load -> new LoadCase("one", List.of(load))).toList();
    List<FrameOutcome> alone = analysis.firstOrder(each);
    FrameSolution together = (FrameSolution) analysis.firstOrder(frame.loadCase());
    for (FrameNode node : frame.nodes()) {
      Vector3 sum = ZERO;
      for (FrameOutcome one : alone) {
        sum = sum.plus(((FrameSolution) one).motion(node).translation());
      }
      near(together.motion(node).translation(), sum, moved(frame, together));
    }
  }

  /** A beam cut into pieces bends as a whole one does, at every place. */
  @Property(tries = 60)
  void piecesChangeNothing(@ForAll long seed) {
    RandomFrame frame = new RandomFrame(seed, SAME, false);
    FrameSolution whole = solve(frame);
    FrameSolution cut =
        (FrameSolution) FrameAnalysis.of(frame.model(), 3).firstOrder(frame.loadCase());
    for (Beam beam : frame.model().beams()) {
      for (int i = 0; i <= 10; i++) {
        double at = beam.length() * i / 10;
        NodeMotion one = whole.forces(beam.name()).motion(at);
        NodeMotion other = cut.forces(beam.name()).motion(at);
        near(other.translation(), one.translation(), moved(frame, whole));
        near(other.rotation(), one.rotation(), turned(frame, whole));
      }
      List<MemberForces.Station> stations = whole.forces(beam.name()).stations();
      double most =
          stations.stream().mapToDouble(one -> Math.abs(one.forces().momentZ())).max().orElse(0);
      for (int i = 0; i <= 50; i++) {
        SectionForces there = cut.forces(beam.name()).at(beam.length() * i / 50);
        assertThat(Math.abs(there.momentZ())).isLessThanOrEqualTo(most * (1 + 1e-6) + 1e-2);
      }
    }
  }

  /** What lets go is what a search through all possibilities finds to let go. */
  @Property(tries = 60)
  void onlyWhatMustLetsGo(@ForAll long seed) {
    OneWayFrame frame = new OneWayFrame(seed);
    FrameOutcome outcome = FrameAnalysis.of(frame.model()).firstOrder(frame.loadCase());
    List<BitSet> possible = new ArrayList<>();
    for (int set = 0; set < 1 << OneWayFrame.PARTS; set++) {
      BitSet slack = BitSet.valueOf(new long[] {set});
      if (frame.rests(slack)) {
        possible.add(slack);
      }
    }
    if (outcome instanceof FrameSolution solution) {
      assertThat(possible).contains(frame.slack(solution));
    } else {
      assertThat(outcome).isInstanceOf(FrameOutcome.Mechanism.class);
      assertThat(possible).isEmpty();
    }
  }
}
