package plycrag.solve.setout;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The steps of the axis that keep-outs cover. */
final class Blocked {
  private final int[] from;
  private final int[] to;

  /** Joins keep-outs that overlap. Cost: sorting them. */
  Blocked(Collection<ForbiddenStretch> keepouts, Steps steps) {
    List<int[]> stretches =
        keepouts.stream()
            .map(one -> new int[] {steps.down(one.low()) + 1, steps.up(one.high()) - 1})
            .filter(one -> one[0] <= one[1])
            .sorted(Comparator.comparingInt(one -> one[0]))
            .toList();
    int[] lows = new int[stretches.size()];
    int[] highs = new int[stretches.size()];
    int count = 0;
    for (int[] one : stretches) {
      if (count > 0 && one[0] <= highs[count - 1] + 1) {
        highs[count - 1] = Math.max(highs[count - 1], one[1]);
      } else {
        lows[count] = one[0];
        highs[count++] = one[1];
      }
    }
    from = Arrays.copyOf(lows, count);
    to = Arrays.copyOf(highs, count);
  }

  /** Whether a line may not lie on a step. */
  boolean has(int step) {
    int at = Arrays.binarySearch(from, step);
    int last = at >= 0 ? at : -at - 2;
    return last >= 0 && step <= to[last];
  }
}
