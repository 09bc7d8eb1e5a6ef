package plycrag.solve.frame;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import plycrag.solve.sparse.Factor;
import plycrag.solve.sparse.FreeMotions;
import plycrag.solve.sparse.SparsePattern;

/** A frame while certain of its one-way parts are slack, ready to be solved for any loads. */
final class HeldFrame {
  private final Equations equations;
  private final BitSet slack;
  private final boolean[] held;
  private final double[] entries;
  private final double[] solved;
  private final List<IdleTurn> idle;
  private final Optional<Factor> factor;
  private final List<double[]> free;

  private HeldFrame(Equations equations, BitSet slack, double[] added, boolean stressed) {
    SparsePattern pattern = equations.pattern();
    this.equations = equations;
    this.slack = (BitSet) slack.clone();
    this.held = equations.held(slack);
    this.entries = equations.entries(slack);
    this.idle = IdleTurn.all(equations.nodes().size(), pattern, entries, held);
    for (int i = 0; i < added.length; i++) {
      entries[i] += added[i];
    }
    double[] braked = entries.clone();
    idle.forEach(turn -> turn.brake(pattern, braked));
    this.solved = pattern.without(braked, held, 1);
    this.factor = Factor.of(pattern, solved);
    this.free = stressed ? List.of() : new FreeMotions(pattern, solved).all(factor);
  }

  /** As it stands without any load. */
  static HeldFrame unstressed(Equations equations, BitSet slack) {
    return new HeldFrame(equations, slack, new double[0], false);
  }

  /** As tensions of its elements, N, stiffen and pressures soften it. */
  static HeldFrame stressed(Equations equations, BitSet slack, double[] tensions) {
    return new HeldFrame(equations, slack, equations.stressEntries(tensions), true);
  }

  BitSet slack() {
    return slack;
  }

  Optional<Factor> factor() {
    return factor;
  }

  /** The motions that it does not resist, if it is not stressed. */
  List<double[]> free() {
    return free;
  }

  /** Whether it stands still under any load, but for idle turns. */
  boolean stands() {
    return factor.isPresent() && free.isEmpty();
  }

  /** A turn of a node that nothing resists and a moment asks for. */
  Optional<double[]> asked(CaseLoads loads) {
    double none = FrameAccuracy.NO_FORCE * loads.greatest();
    return idle.stream()
        .filter(turn -> Math.abs(turn.moment(loads.forces())) > none)
        .findFirst()
        .map(turn -> turn.motion(held.length));
  }

  /** The motions under loads, by freedom; it must have a factor. */
  double[] motions(CaseLoads loads) {
    double[] moved = loads.moved(held);
    double[] forces = loads.forces().clone();
    double[] pulled = equations.pattern().times(entries, moved);
    for (int i = 0; i < forces.length; i++) {
      forces[i] = held[i] ? moved[i] : forces[i] - pulled[i];
    }
    return factor.orElseThrow().solve(forces);
  }

  /** What has to hold each freedom from outside while it moves so under loads. */
  double[] holding(double[] motions, CaseLoads loads) {
    double[] holding = equations.pattern().times(entries, motions);
    for (int i = 0; i < holding.length; i++) {
      holding[i] -= loads.forces()[i];
    }
    return holding;
  }

  /** Entries over the freedoms that move alone. */
  double[] moving(double[] whole) {
    return equations.pattern().without(whole, held, 0);
  }

  /** Its own entries with so many times others, which are of moving freedoms alone. */
  double[] with(double[] others, double times) {
    double[] sum = solved.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += times * others[i];
    }
    return sum;
  }
}
