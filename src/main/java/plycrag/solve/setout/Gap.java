package plycrag.solve.setout;

import java.util.List;
import java.util.stream.IntStream;

/** Where members may stand between two neighbouring fixed ones, in steps. */
final class Gap {
  /** Whether there need be none. */
  final boolean direct;

  /** The lowest and the highest place of any. */
  final int from;

  final int to;

  /** The highest place of the first and the lowest of the last. */
  final int firstTo;

  final int lastFrom;

  /** Least and greatest distance between neighbours. */
  final int least;

  final int most;

  /** From a member's centre to the nearest line beside it. */
  final int reach;

  /** As laid out first. */
  final List<Integer> atFirst;

  /** A gap without members. */
  Gap() {
    direct = true;
    from = 1;
    to = 0;
    firstTo = 0;
    lastFrom = 0;
    least = 0;
    most = 0;
    reach = 0;
    atFirst = List.of();
  }

  /**
   * The gap of a bay.
   *
   * @throws IllegalArgumentException if its members, as laid out first, break its spacing
   */
  Gap(CrossingMember low, CrossingMember high, Bay bay, Limits limits) {
    Steps steps = new Steps(limits.step());
    double half = bay.halfBreadth();
    direct = high.centre() - low.centre() <= bay.greatestSpacing();
    from = steps.up(low.centre() + low.halfBreadth() + half);
    to = steps.down(high.centre() - high.halfBreadth() - half);
    firstTo = steps.down(low.centre() + bay.greatestSpacing());
    lastFrom = steps.up(high.centre() - bay.greatestSpacing());
    least = steps.up(2 * half);
    most = steps.down(bay.greatestSpacing());
    reach = steps.up(half + limits.toMember());
    atFirst = bay.members().stream().map(one -> steps.nearest(one.centre())).toList();
    if (!keepsSpacing()) {
      throw new IllegalArgumentException("members break the spacing of their bay: " + bay);
    }
  }

  private boolean keepsSpacing() {
    int first = atFirst.get(0);
    int last = atFirst.get(atFirst.size() - 1);
    return Math.max(from, lastFrom) <= last
        && last <= to
        && from <= first
        && first <= Math.min(to, firstTo)
        && IntStream.range(1, atFirst.size())
            .map(at -> atFirst.get(at) - atFirst.get(at - 1))
            .allMatch(apart -> least <= apart && apart <= most);
  }

  /** As few members as the spacing allows. */
  int fewest() {
    if (direct) {
      return 0;
    }
    int members = 1;
    for (int place = Math.min(firstTo, to); place < lastFrom; members++) {
      place = Math.min(place + most, to);
    }
    return members;
  }

  /** Whether a member may stand at a place when there are as few as the spacing allows. */
  boolean isSparing(int place) {
    int below = place <= firstTo ? 0 : jumps(place - Math.min(firstTo, to));
    int above = place >= lastFrom ? 0 : jumps(Math.max(lastFrom, from) - place);
    return below + 1 + above <= fewest();
  }

  private int jumps(int distance) {
    return (distance + most - 1) / most;
  }

  /** As many as find room. */
  int room() {
    return to < from ? 0 : (to - from) / Math.max(1, least) + 1;
  }
}
