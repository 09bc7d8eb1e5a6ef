package plycrag.solve.setout;

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
final class EvenedGaps {
  private final SteppedTask ground;
  private final int[] lines;

  EvenedGaps(SteppedTask ground, Integer[] places) {
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
      long[] rest = member == last ? ends(gap, width) : least(gap, costs[member + 1]);
      for (int at = 0; at < width; at++) {
        int place = gap.from + at;
        costs[member][at] =
            isClear(gap, place)
                ? rest[at] + Math.abs(place - wanted.get(member))
                : MemberSite.NEVER;
      }
    }
    return follow(gap, costs);
  }

  /** What follows the last member: nothing, where it is near enough to the fixed one. */
  private static long[] ends(Gap gap, int width) {
    long[] rest = new long[width];
    Arrays.fill(rest, 0, Math.min(width, Math.max(0, gap.lastFrom - gap.from)), MemberSite.NEVER);
    return rest;
  }

  /**
   * For each place of a member the least cost of the places that the next one may have. Those that
   * none further down undercuts stand in a queue, so that each comes and goes once.
   */
  private static long[] least(Gap gap, long[] costs) {
    long[] least = new long[costs.length];
    int[] queue = new int[costs.length];
    int first = 0;
    int end = 0;
    for (int at = costs.length - 1; at >= 0; at--) {
      int next = at + gap.least;
      if (next < costs.length) {
        while (end > first && costs[queue[end - 1]] >= costs[next]) {
          end--;
        }
        queue[end++] = next;
      }
      if (end > first && queue[first] > at + gap.most) {
        first++;
      }
      least[at] = end > first ? costs[queue[first]] : MemberSite.NEVER;
    }
    return least;
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
