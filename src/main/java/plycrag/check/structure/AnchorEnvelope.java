package plycrag.check.structure;

import plycrag.geometry.Vector3;
import plycrag.layout.structure.Combination;
import plycrag.solve.frame.NodeForce;

/** The worst that one anchor has to bear so far, N: design values, and in use. */
final class AnchorEnvelope {
  /**
   * A force and its cause.
   *
   * @param amount N
   * @param loadCase the loads
   */
  record Force(double amount, String loadCase) {
    private static final Force NONE = new Force(0, "");
  }

  private final Vector3 outward;
  private Force pull = Force.NONE;
  private Force shear = Force.NONE;
  private Force push = Force.NONE;

  /** Of an anchor from whose building the way leads outward, of length one. */
  AnchorEnvelope(Vector3 outward) {
    this.outward = outward;
  }

  /**
   * Takes what it does to the frame in. Whichever edge presses, the anchor pulls against it as
   * well.
   *
   * @param force at its place
   * @param edge with which one edge beside it presses, N; below zero the other one does
   */
  void add(NodeForce force, double edge, Combination combination, String loadCase) {
    if (combination.isUltimate()) {
      double along = force.force().dot(outward);
      double across = force.force().minus(outward.times(along)).length();
      pull = greater(pull, Math.abs(edge) - edge - along, loadCase);
      push = greater(push, along + edge, loadCase);
      shear = greater(shear, across, loadCase);
    }
  }

  private static Force greater(Force before, double amount, String loadCase) {
    return amount > before.amount() ? new Force(amount, loadCase) : before;
  }

  /** Along it, out of the building. */
  Force pull() {
    return pull;
  }

  /** Against the building. */
  Force push() {
    return push;
  }

  /** Across it. */
  Force shear() {
    return shear;
  }
}
