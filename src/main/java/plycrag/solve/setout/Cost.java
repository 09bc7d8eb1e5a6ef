package plycrag.solve.setout;

import java.util.Comparator;

/**
 * What a set-out costs; the lesser is better, the first component first.
 *
 * @param dropped lines left out
 * @param largestMove of a line, mm
 * @param members in the bays
 * @param moves sum of all lines' moves, mm
 * @param lean the same sum with signs, mm; of equal moves the lower place is better
 */
record Cost(int dropped, double largestMove, int members, double moves, double lean)
    implements Comparable<Cost> {
  private static final Comparator<Cost> ORDER =
      Comparator.comparingInt(Cost::dropped)
          .thenComparingDouble(Cost::largestMove)
          .thenComparingInt(Cost::members)
          .thenComparingDouble(Cost::moves)
          .thenComparingDouble(Cost::lean);

  @Override
  public int compareTo(Cost other) {
    return ORDER.compare(this, other);
  }
}
