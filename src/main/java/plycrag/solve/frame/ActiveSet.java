package plycrag.solve.frame;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds which one-way parts act: all that pull the wrong way let go, and all that would be run into
 * act again, as long as that makes them fewer; then one at a time, the first of them. That comes to
 * an end wherever there is one: J. Júdice and F. Pires (Comput. Oper. Res. 21(5), 1994) with K.
 * Murty's rule. Where letting go sets the frame free, the loads move it until another part stops
 * it.
 */
final class ActiveSet {
  private static final int ROUNDS = 40;
  private static final int ROUNDS_OF_EACH = 10;
  private static final int CHANCES = 6;

  private final Equations equations;
  private final Function<BitSet, HeldFrame> frames;
  private final CaseLoads loads;
  private final BitSet slack;
  private Rest last;
  private boolean oneAtATime;
  private int fewest = Integer.MAX_VALUE;
  private int chances = CHANCES;

  /** How it ended. */
  sealed interface Balance {}

  /** A frame at rest. */
  static final class Rest implements Balance {
    private final HeldFrame frame;
    private final double[] motions;

    Rest(HeldFrame frame, double[] motions) {
      this.frame = frame;
      this.motions = motions;
    }

    /** With the parts that act. */
    HeldFrame frame() {
      return frame;
    }

    /** By freedom. */
    double[] motions() {
      return motions;
    }
  }

  /**
   * None was found.
   *
   * @param outcome why
   */
  record None(FrameOutcome.Unsolved outcome) implements Balance {}

  /** Starts with certain parts slack. */
  ActiveSet(
      Equations equations, Function<BitSet, HeldFrame> frames, CaseLoads loads, BitSet slack) {
    this.equations = equations;
    this.frames = frames;
    this.loads = loads;
    this.slack = (BitSet) slack.clone();
  }

  Balance balance() {
    int rounds = ROUNDS + ROUNDS_OF_EACH * equations.oneWays().size();
    for (int round = 0; round < rounds; round++) {
      HeldFrame frame = frames.apply((BitSet) slack.clone());
      Optional<Balance> end = frame.stands() ? standing(frame) : falling(frame);
      if (end.isPresent()) {
        return end.get();
      }
    }
    return new None(new FrameOutcome.Unsettled(rounds));
  }

  private Optional<Balance> standing(HeldFrame frame) {
    Optional<double[]> turn = frame.asked(loads);
    if (turn.isPresent()) {
      return Optional.of(mechanism(List.of(turn.get()), true));
    }
    last = new Rest(frame, frame.motions(loads));
    BitSet wrong = wrong(last);
    if (wrong.isEmpty()) {
      return Optional.of(last);
    }
    flip(wrong);
    return Optional.empty();
  }

  private void flip(BitSet wrong) {
    int count = wrong.cardinality();
    if (count < fewest) {
      fewest = count;
      chances = CHANCES;
    } else {
      chances--;
    }
    oneAtATime = count == 1 || chances < 0;
    if (oneAtATime) {
      slack.flip(wrong.nextSetBit(0));
    } else {
      slack.xor(wrong);
    }
  }

  /** The parts that take the wrong sign of force, or are run into while slack. */
  private BitSet wrong(Rest rest) {
    double[] holding = rest.frame().holding(rest.motions(), loads);
    double noForce = FrameAccuracy.NO_FORCE * loads.greatest();
    double noGap = FrameAccuracy.NO_FORCE * CaseLoads.greatest(rest.motions());
    BitSet wrong = new BitSet();
    for (int i = 0; i < equations.oneWays().size(); i++) {
      OneWay part = equations.oneWays().get(i);
      boolean isWrong =
          rest.frame().slack().get(i)
              ? part.sign() * measure(part, rest.motions()) > noGap
              : part.sign() * force(part, rest.motions(), holding) < -noForce;
      wrong.set(i, isWrong);
    }
    return wrong;
  }

  private double force(OneWay part, double[] motions, double[] holding) {
    return part.isRigid()
        ? holding[part.freedom()]
        : equations.elements().get(part.element()).axial(motions);
  }

  /** How far a part would have to give for a positive force. */
  private double measure(OneWay part, double[] motions) {
    return part.isRigid()
        ? loads.moved(part.freedom()) - motions[part.freedom()]
        : ((Link) equations.elements().get(part.element())).measure(motions);
  }

  private Optional<Balance> falling(HeldFrame frame) {
    if (frame.free().isEmpty()) {
      return Optional.of(new None(new FrameOutcome.Buckled(0)));
    }
    if (last == null) {
      return Optional.of(mechanism(frame.free(), false));
    }
    if (!oneAtATime) {
      oneAtATime = true;
      BitSet wrong = (BitSet) slack.clone();
      wrong.xor(last.frame().slack());
      slack.xor(wrong);
      slack.flip(wrong.nextSetBit(0));
      return Optional.empty();
    }
    return driven(frame.free());
  }

  /** Follows the motion that the loads drive most until a slack part stops it. */
  private Optional<Balance> driven(List<double[]> free) {
    double[] motion = free.get(0);
    for (double[] one : free) {
      motion = Math.abs(work(one)) > Math.abs(work(motion)) ? one : motion;
    }
    if (Math.abs(work(motion)) <= FrameAccuracy.NO_FORCE * loads.greatest()) {
      return Optional.of(mechanism(free, false));
    }
    double[] way = times(motion, Math.signum(work(motion)));
    int stop = firstStop(way);
    if (stop < 0) {
      return Optional.of(mechanism(List.of(way), true));
    }
    slack.clear(stop);
    return Optional.empty();
  }

  private double work(double[] motion) {
    double work = 0;
    for (int i = 0; i < motion.length; i++) {
      work += motion[i] * loads.forces()[i];
    }
    return work;
  }

  private static double[] times(double[] motion, double factor) {
    double[] product = motion.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] *= factor;
    }
    return product;
  }

  /** The slack part that a motion from the last rest runs into first, or -1. */
  private int firstStop(double[] way) {
    double none = FrameAccuracy.NO_FORCE * CaseLoads.greatest(way);
    int first = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = slack.nextSetBit(0); i >= 0; i = slack.nextSetBit(i + 1)) {
      OneWay part = equations.oneWays().get(i);
      double speed = part.sign() * (measure(part, way) - measure(part, new double[way.length]));
      if (speed > none) {
        double time = -part.sign() * measure(part, last.motions()) / speed;
        first = time < least ? i : first;
        least = Math.min(least, time);
      }
    }
    return first;
  }

  private Balance mechanism(List<double[]> motions, boolean oneWay) {
    List<FrameNode> nodes = equations.nodes();
    return new None(
        new FrameOutcome.Mechanism(
            motions.stream()
                .map(one -> oneWay ? Motion.of(nodes, one) : Motion.eitherWay(nodes, one))
                .toList()));
  }
}
