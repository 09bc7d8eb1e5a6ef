package plycrag.solve.frame;

import java.util.BitSet;
import java.util.function.Function;

/**
 * The frame as it has moved: axial forces are reckoned again and again with what they do to the
 * stiffness, until they change no more.
 */
final class SecondOrder {
  private static final int ROUNDS = 60;

  private final Equations equations;
  private final CaseLoads loads;

  SecondOrder(Equations equations, CaseLoads loads) {
    this.equations = equations;
    this.loads = loads;
  }

  /** From a first-order solution. */
  FrameOutcome from(ActiveSet.Rest first) {
    ActiveSet.Rest rest = first;
    for (int round = 0; round < ROUNDS; round++) {
      double[] tensions = tensions(rest);
      Function<BitSet, HeldFrame> frames = slack -> HeldFrame.stressed(equations, slack, tensions);
      ActiveSet.Balance balance =
          new ActiveSet(equations, frames, loads, rest.frame().slack()).balance();
      if (balance instanceof ActiveSet.None none) {
        return none.outcome() instanceof FrameOutcome.Buckled
            ? new FrameOutcome.Buckled(round + 1)
            : none.outcome();
      }
      rest = (ActiveSet.Rest) balance;
      if (settled(tensions, tensions(rest))) {
        return new FrameSolution(equations, rest.frame(), loads, rest.motions(), tensions);
      }
    }
    return new FrameOutcome.Unsettled(ROUNDS);
  }

  private double[] tensions(ActiveSet.Rest rest) {
    return equations.tensions(rest.motions(), rest.frame().slack());
  }

  private static boolean settled(double[] before, double[] now) {
    double most = FrameAccuracy.SETTLED * CaseLoads.greatest(now);
    for (int i = 0; i < now.length; i++) {
      if (Math.abs(now[i] - before[i]) > most) {
        return false;
      }
    }
    return true;
  }
}
