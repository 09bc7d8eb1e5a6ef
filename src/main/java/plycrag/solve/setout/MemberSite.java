package plycrag.solve.setout;

import java.util.Arrays;

/**
 * A place of a member, with the least cost of all that lies above it. That depends on which line
 * comes next, and on by how much the line before keeps that one further off than the member does:
 * the excess.
 */
final class MemberSite {
  /** More than any cost, and far enough from the end of the range to be added to. */
  static final long NEVER = Long.MAX_VALUE >> 2;

  /** The last place of a line before the member. */
  final int low;

  /** The first place of a line after it. */
  final int high;

  /** Lines below can lie only before it, those from {@link #last} on only after it. */
  final int first;

  final int last;

  private final long[][] costs;
  private final Step[][] next;

  /** Where the cheapest way goes on: the next member, and the first line after it. */
  record Step(MemberSite site, int line) {}

  MemberSite(LineReach field, int low, int high) {
    this.low = low;
    this.high = high;
    first = field.firstReaching(high);
    last = Math.max(first, field.firstAbove(low));
    costs = new long[last - first + 1][];
    next = new Step[costs.length][];
    for (int line = first; line <= last; line++) {
      costs[line - first] = new long[1 + greatestExcess(field, line)];
      next[line - first] = new Step[costs[line - first].length];
      Arrays.fill(costs[line - first], NEVER);
    }
  }

  private int greatestExcess(LineReach field, int line) {
    if (line == 0 || line == field.wanted.length) {
      return 0;
    }
    int reach = Math.min(low, field.highest(line - 1)) + field.apart;
    return reach <= field.lowest(line) ? 0 : Math.max(0, reach - high);
  }

  /** Whether what lies above is independent of what lies below. */
  boolean isDivide() {
    return costs.length == 1 && costs[0].length == 1;
  }

  /** How many values the excess has with a certain line next. */
  int excesses(int line) {
    return costs[line - first].length;
  }

  /** The excess if the next line may lie from a place on. */
  int excess(int line, int from) {
    return Math.max(0, Math.min(excesses(line) - 1, from - high));
  }

  long cost(int line, int excess) {
    return costs[line - first][excess];
  }

  Step next(int line, int excess) {
    return next[line - first][excess];
  }

  /** Nothing lies above. */
  void close() {
    costs[0][0] = 0;
  }

  /** Takes over a way that costs no more. */
  void offer(int line, int excess, long cost, Step step) {
    if (cost <= costs[line - first][excess]) {
      costs[line - first][excess] = cost;
      next[line - first][excess] = step;
    }
  }
}
