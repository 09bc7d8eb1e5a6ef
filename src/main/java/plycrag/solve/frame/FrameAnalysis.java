package plycrag.solve.frame;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Solves one frame for any number of cases. What it factors for one it keeps for the others, so one
 * thread at a time may use it.
 */
public final class FrameAnalysis {
  private final Equations equations;
  private final Map<BitSet, HeldFrame> frames = new HashMap<>();

  private FrameAnalysis(Equations equations) {
    this.equations = equations;
  }

  /** For first-order solutions, which are exact with beams in one piece. */
  public static FrameAnalysis of(FrameModel model) {
    return of(model, 1);
  }

  /** With every beam in so many pieces of one length: for buckling and second order. */
  public static FrameAnalysis of(FrameModel model, int pieces) {
    return new FrameAnalysis(new Equations(model, pieces));
  }

  /** In equilibrium as it stands without loads. */
  public FrameOutcome firstOrder(LoadCase loadCase) {
    CaseLoads loads = new CaseLoads(equations, loadCase);
    ActiveSet.Balance balance = first(loads);
    if (balance instanceof ActiveSet.Rest rest) {
      return new FrameSolution(
          equations, rest.frame(), loads, rest.motions(), new double[equations.elements().size()]);
    }
    return ((ActiveSet.None) balance).outcome();
  }

  /** The same of each case, in order. */
  public List<FrameOutcome> firstOrder(List<LoadCase> cases) {
    return cases.stream().map(this::firstOrder).toList();
  }

  /** In equilibrium as it has moved: axial forces act where nodes and beams have gone. */
  public FrameOutcome secondOrder(LoadCase loadCase) {
    CaseLoads loads = new CaseLoads(equations, loadCase);
    ActiveSet.Balance balance = first(loads);
    return balance instanceof ActiveSet.Rest rest
        ? new SecondOrder(equations, loads).from(rest)
        : ((ActiveSet.None) balance).outcome();
  }

  private ActiveSet.Balance first(CaseLoads loads) {
    return new ActiveSet(equations, this::frame, loads, new BitSet()).balance();
  }

  private HeldFrame frame(BitSet slack) {
    return frames.computeIfAbsent(slack, one -> HeldFrame.unstressed(equations, one));
  }
}
