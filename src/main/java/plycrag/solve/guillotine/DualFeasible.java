package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Functions of a length that never sum to more than their capacity while the lengths sum to no more
 * than the whole. See S. Fekete, J. Schepers, New classes of fast lower bounds for bin packing
 * problems, Mathematical Programming 91, 2001; J. Carlier, F. Clautiaux, A. Moukrim, New reduction
 * procedures and lower bounds for the two-dimensional bin packing problem with fixed orientation,
 * Computers & OR 34, 2007.
 */
final class DualFeasible {
  private static final int MOST_STEPS = 4;

  private final long[] values;
  private final long capacity;

  private DualFeasible(long[] values, long capacity) {
    this.values = values;
    this.capacity = capacity;
  }

  /** Of a length, by its place among the lengths. */
  long value(int place) {
    return values[place];
  }

  /** No set of lengths that fits the whole has values of a larger sum. */
  long capacity() {
    return capacity;
  }

  /**
   * A family of functions.
   *
   * @param lengths longer ones than the whole are valued at its capacity
   * @param most of them, evenly spread
   */
  static List<DualFeasible> family(int[] lengths, int whole, int most) {
    List<DualFeasible> all = new ArrayList<>();
    all.add(of(lengths, whole, length -> length, whole));
    for (int steps = 1; steps <= MOST_STEPS; steps++) {
      all.add(stepped(lengths, whole, steps));
    }
    for (int least : leasts(lengths, whole)) {
      all.add(rounded(lengths, whole, least));
      all.add(counted(lengths, whole, least));
    }
    int kept = Math.min(most, all.size());
    List<DualFeasible> spread = new ArrayList<>();
    for (int place = 0; place < kept; place++) {
      spread.add(all.get((int) ((long) place * all.size() / kept)));
    }
    return spread;
  }

  private interface Value {
    long of(long length);
  }

  private static DualFeasible of(int[] lengths, int whole, Value value, long capacity) {
    long[] values =
        Arrays.stream(lengths)
            .mapToLong(length -> length > whole ? capacity : value.of(length))
            .toArray();
    return new DualFeasible(values, capacity);
  }

  /** Where a family changes: at every length and at what it leaves of the whole. */
  private static SortedSet<Integer> leasts(int[] lengths, int whole) {
    SortedSet<Integer> leasts = new TreeSet<>();
    for (int length : lengths) {
      leasts.addAll(List.of(length, whole - length, whole - length + 1));
    }
    leasts.removeIf(least -> least < 1 || 2L * least > whole + 1L);
    return leasts;
  }

  /** Rounds down to multiples of whole/(steps + 1) what is none. */
  private static DualFeasible stepped(int[] lengths, int whole, int steps) {
    Value value =
        length -> {
          long parts = (steps + 1L) * length;
          return parts % whole == 0 ? length * steps : parts / whole * whole;
        };
    return of(lengths, whole, value, (long) whole * steps);
  }

  /** Short lengths count nothing, and those that leave no room for others the whole. */
  private static DualFeasible rounded(int[] lengths, int whole, int least) {
    Value value = length -> length > whole - least ? whole : length < least ? 0 : length;
    return of(lengths, whole, value, whole);
  }

  /** Counts how often the least length goes in; long ones count what they take from the whole. */
  private static DualFeasible counted(int[] lengths, int whole, int least) {
    long times = whole / least;
    Value value =
        length -> {
          if (2 * length == whole) {
            return times;
          }
          return 2 * length < whole ? 2 * (length / least) : 2 * (times - (whole - length) / least);
        };
    return of(lengths, whole, value, 2 * times);
  }
}
