package plycrag.solve.setout;

import java.util.List;

/**
 * Lines and members set out.
 *
 * @param lines in the task's order
 * @param bays for each bay the centres of its members, ascending, mm
 * @param cost by which it is the best
 */
public record Result(List<SetLine> lines, List<List<Double>> bays, Cost cost) {
  /** Copies the lists. */
  public Result {
    lines = List.copyOf(lines);
    bays = bays.stream().map(List::copyOf).toList();
  }

  /** Whether neither is better. */
  public boolean isAsGoodAs(Result other) {
    return cost.compareTo(other.cost) == 0;
  }
}
