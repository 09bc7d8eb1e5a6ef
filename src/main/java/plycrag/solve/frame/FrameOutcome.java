package plycrag.solve.frame;

import java.util.List;

/** What comes of a frame under loads. */
public sealed interface FrameOutcome permits FrameSolution, FrameOutcome.Unsolved {
  /** It has no solution, and that is the answer. */
  sealed interface Unsolved extends FrameOutcome {}

  /**
   * The frame moves without resistance.
   *
   * @param motions how: independent of each other, and every such motion is a sum of them. Where
   *     loads drive it while one-way parts let go, there is one and it goes the way of the loads.
   */
  record Mechanism(List<Motion> motions) implements Unsolved {}

  /**
   * The loads are above those under which it buckles.
   *
   * @param rounds how often axial forces had been reckoned
   */
  record Buckled(int rounds) implements Unsolved {}

  /**
   * Which one-way parts act, or which axial forces, was not found within the count.
   *
   * @param rounds that count
   */
  record Unsettled(int rounds) implements Unsolved {}
}
