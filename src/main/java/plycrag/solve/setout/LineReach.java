package plycrag.solve.setout;

/** Where each line may go when it moves no further than a bound; in steps. */
final class LineReach {
  final int[] wanted;
  final int bound;
  final int apart;
  private final boolean[][] free;

  LineReach(SteppedTask ground, int bound) {
    wanted = ground.wanted;
    apart = ground.apart;
    this.bound = bound;
    free = new boolean[wanted.length][2 * bound + 1];
    for (int line = 0; line < wanted.length; line++) {
      for (int at = 0; at <= 2 * bound; at++) {
        free[line][at] = !ground.keepouts.has(lowest(line) + at);
      }
    }
  }

  /** The lowest place of a line. */
  int lowest(int line) {
    return wanted[line] - bound;
  }

  /** The highest place of a line. */
  int highest(int line) {
    return wanted[line] + bound;
  }

  /** Whether no keep-out covers the place so far above a line's lowest one. */
  boolean isFree(int line, int above) {
    return free[line][above];
  }

  /** The first line that can reach a place from below. */
  int firstReaching(int place) {
    return first(place - bound);
  }

  /** The first line that stays above a place. */
  int firstAbove(int place) {
    return first(place + bound + 1);
  }

  private int first(int least) {
    int low = 0;
    int high = wanted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (wanted[middle] >= least) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
