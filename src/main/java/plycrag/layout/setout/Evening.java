package plycrag.layout.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Members between lines that have their places: a stated number in each gap, with the least sum of
 * moves from where they were laid out first, or from an even division if their number has changed;
 * of equal ones the lower.
 */
final class Evening {
  private final Ground ground;
  private final int[] lines;

  Evening(Ground ground, Integer[] places) {
    this.ground = ground;
    lines = Arrays.stream(places).filter(Objects::nonNull).mapToInt(place -> place).toArray();
  }

  /** The members of each gap. */
  List<List<Integer>> members(int[] counts) {
    return IntStream.range(0, counts.length)
        .mapToObj(gap -> members(ground.gaps.get(gap), counts[gap]))
        .toList();
  }

  private List<Integer> members(Gap gap, int count) {
    List<Integer> wanted = count == gap.atFirst.size() ? gap.atFirst : even(gap, count);
    return wanted.isEmpty() || keepsClear(gap, wanted) ? wanted : leastMoved(gap, wanted);
  }

  /** Even between the nearest places to the fixed members. */
  private static List<Integer> even(Gap gap, int count) {
    double low = gap.firstTo - gap.most;
    double high = gap.lastFrom + gap.most;
    return IntStream.rangeClosed(1, count)
        .mapToObj(at -> (int) Math.ceil(low + (high - low) * at / (count + 1) - 0.5))
        .toList();
  }

  private boolean keepsClear(Gap gap, List<Integer> members) {
    return members == gap.atFirst && members.stream().allMatch(place -> isClear(gap, place));
  }

  private boolean isClear(Gap gap, int place) {
    int at = Arrays.binarySearch(lines, place - gap.reach + 1);
    int next = at >= 0 ? at : -at - 1;
    return next == lines.length || lines[next] >= place + gap.reach;
  }

  private List<Integer> leastMoved(Gap gap, List<Integer> wanted) {
    int last = wanted.size() - 1;
    int width = gap.to - gap.from + 1;
    long[][] costs = new long[wanted.size()][width];
    for (int member = last; member >= 0; member--) {
      for (int at = 0; at < width; at++) {
        int place = gap.from + at;
        boolean ends = member == last && place >= gap.lastFrom;
        long rest = ends ? 0 : member == last ? Site.NEVER : least(gap, costs[member + 1], at);
        costs[member][at] =
            isClear(gap, place) ? rest + Math.abs(place - wanted.get(member)) : Site.NEVER;
      }
    }
    return follow(gap, costs);
  }

  private static List<Integer> follow(Gap gap, long[][] costs) {
    List<Integer> members = new ArrayList<>();
    int from = 0;
    int to = gap.firstTo - gap.from;
    for (long[] cost : costs) {
      int at = cheapest(cost, from, to);
      members.add(gap.from + at);
      from = at + gap.least;
      to = at + gap.most;
    }
    return members;
  }

  private static long least(Gap gap, long[] costs, int at) {
    int next = cheapest(costs, at + gap.least, at + gap.most);
    return next < 0 ? Site.NEVER : costs[next];
  }

  /** The lowest of the cheapest places, or -1 if there is none. */
  private static int cheapest(long[] costs, int from, int to) {
    int best = -1;
    for (int at = from; at <= Math.min(to, costs.length - 1); at++) {
      if (best < 0 || costs[at] < costs[best]) {
        best = at;
      }
    }
    return best;
  }
}
