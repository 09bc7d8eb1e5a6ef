package plycrag.solve.setout;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import plycrag.geometry.Tolerance;

/**
 * Members that may move between two neighbouring fixed ones.
 *
 * @param after the index of the fixed member below them
 * @param greatestSpacing between the centres of neighbours, the fixed ones included, mm
 * @param members as they are laid out first, ascending, at least one; all of one breadth, centres
 *     on the marking grid, the greatest spacing kept
 */
public record Bay(int after, double greatestSpacing, List<CrossingMember> members) {
  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if it is empty or the breadths differ
   */
  public Bay {
    members = List.copyOf(members);
    DoubleSummaryStatistics halves =
        members.stream().mapToDouble(CrossingMember::halfBreadth).summaryStatistics();
    if (members.isEmpty() || halves.getMax() - halves.getMin() > Tolerance.OFF_GRID) {
      throw new IllegalArgumentException("a bay has members, and of one breadth: " + members);
    }
  }

  /** Half the breadth of each, mm. */
  double halfBreadth() {
    return members.get(0).halfBreadth();
  }

  /** What to call a member at a place: the mark of the one laid out nearest to it at first. */
  String name(double centre) {
    return members.stream()
        .min(Comparator.comparingDouble(member -> Math.abs(member.centre() - centre)))
        .orElseThrow()
        .name();
  }
}
