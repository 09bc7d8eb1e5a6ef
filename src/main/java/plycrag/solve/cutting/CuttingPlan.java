package plycrag.solve.cutting;

import java.util.List;

/**
 * Which pieces come out of which sticks.
 *
 * @param patterns what is cut alike, no two the same
 * @param cost of all sticks
 * @param costBound no plan costs less
 * @param waste what remains of the sticks, kerfs and trimmed ends counted
 * @param leastWaste whether no plan of this cost wastes less
 */
public record CuttingPlan(
    List<Cut> patterns, long cost, long costBound, long waste, boolean leastWaste) {
  /** Copies the patterns. */
  public CuttingPlan {
    patterns = List.copyOf(patterns);
  }

  /**
   * Sticks that are cut alike.
   *
   * @param stock index in the task's list
   * @param lengths of the pieces in the order of cutting, the longest first
   * @param sticks how many are cut so
   */
  public record Cut(int stock, List<Long> lengths, int sticks) {
    /** Copies the lengths. */
    public Cut {
      lengths = List.copyOf(lengths);
    }
  }
}
