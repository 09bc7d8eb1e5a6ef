package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Looks for a packing that is no heavier than a target, completely: takes the piece that can go
 * into the fewest patterns, and tries each of them that can still lead there. A bin that costs more
 * than what it holds is worth uses up slack; where slack is gone, so is the branch. A bin into
 * which a piece left would still fit need not be looked at, since that piece may as well be moved
 * there.
 */
final class Completion {
  private static final int MOST_PATTERNS = 20_000;
  private static final long NODE = 50;
  private static final long NEAR = 32;
  private static final int ATTEMPTS = 6;
  private static final long STEPS = 60_000_000;
  private static final long LAST_STEPS = 200_000_000;
  private static final long COARSE = 5000;
  private static final long SEED = 20_260_101;

  private final Packing packing;
  private final Incumbent incumbent;
  private final Effort effort;
  private final DualBound bound;
  private final Outlook outlook;
  private final Set<String> seen = new HashSet<>();
  private final Random random;
  private final long coarse;
  private long target;
  private boolean isCutShort;

  private Completion(
      Packing packing, Incumbent incumbent, Effort effort, DualBound bound, Random random) {
    this.packing = packing;
    this.incumbent = incumbent;
    this.effort = effort;
    this.bound = bound;
    this.random = random;
    this.coarse = Math.max(1, bound.weight(0) / COARSE);
    this.outlook = new Outlook(packing, bound);
  }

  /**
   * Raises the bound while nothing lighter is found: looks just above it first, then further and
   * further. A search that has taken a wrong turn early is given up and begun again with equals in
   * another order.
   */
  static void run(Packing packing, Incumbent incumbent, Effort effort, DualBound bound) {
    Random random = new Random(SEED);
    long reach = 0;
    for (int attempt = 0; attempt < ATTEMPTS && !incumbent.isProven(); ) {
      Effort part = effort.part(attempt == ATTEMPTS - 1 ? LAST_STEPS : STEPS);
      Completion completion = new Completion(packing, incumbent, part, bound, random);
      completion.target = Math.min(incumbent.bound() + reach, incumbent.weight() - 1);
      completion.search(Remainder.all(packing));
      if (completion.isCutShort) {
        attempt++;
      } else {
        incumbent.raise(completion.target + 1);
        reach = Math.max(2 * reach, (incumbent.weight() - incumbent.bound()) / NEAR);
      }
    }
  }

  private void search(Remainder rest) {
    if (rest.isEmpty()) {
      incumbent.offer(rest);
      target = Math.min(target, incumbent.weight() - 1);
      return;
    }
    effort.spend(NODE * packing.kinds());
    if (effort.isExhausted() || !seen.add(key(rest))) {
      isCutShort |= effort.isExhausted();
      return;
    }
    List<CuttingPattern> patterns = fewest(rest);
    Collections.shuffle(patterns, random);
    patterns.sort(Comparator.comparingLong(pattern -> bound.reducedCost(pattern) / coarse));
    for (CuttingPattern pattern : patterns) {
      if (incumbent.isProven() || isCutShort) {
        return;
      }
      search(rest.after(packing, pattern, 1));
    }
  }

  private String key(Remainder rest) {
    StringBuilder key = new StringBuilder();
    for (int demand : rest.demands()) {
      key.append((char) demand);
    }
    for (int left : rest.left()) {
      key.append((char) left);
    }
    return key.append(rest.spent()).toString();
  }

  private List<CuttingPattern> fewest(Remainder rest) {
    List<CuttingPattern> fewest = null;
    for (int kind = 0; kind < packing.kinds(); kind++) {
      if (rest.demands()[kind] > 0 && !isCutShort) {
        int most = fewest == null ? MOST_PATTERNS : fewest.size() - 1;
        List<CuttingPattern> patterns = patterns(rest, kind, most);
        if (patterns.size() <= most) {
          fewest = patterns;
        } else if (fewest == null) {
          isCutShort = true;
        }
        if (fewest != null && fewest.size() <= 1) {
          return fewest;
        }
      }
    }
    return fewest == null ? new ArrayList<>() : fewest;
  }

  /** All patterns with a piece of one kind; one too many if there are more than that. */
  private List<CuttingPattern> patterns(Remainder rest, int forced, int most) {
    Branch branch = new Branch(rest, new int[packing.kinds()], most);
    long slack = bound.slack(rest, target - rest.spent());
    branch.counts[forced] = 1;
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      int room = packing.bins().get(bin).capacity() - packing.sizes()[forced];
      if (rest.left()[bin] > 0 && room >= 0) {
        long needed = bound.weight(bin) + bound.excess(bin) - slack - bound.price(forced);
        branch.bin = bin;
        extend(branch, 0, room, needed);
      }
    }
    return branch.found;
  }

  /** Counts are filled in and emptied again on the way. */
  private static final class Branch {
    private final Remainder rest;
    private final int[] counts;
    private final int most;
    private final List<CuttingPattern> found = new ArrayList<>();
    private int bin;

    Branch(Remainder rest, int[] counts, int most) {
      this.rest = rest;
      this.counts = counts;
      this.most = most;
    }

    int left(int kind) {
      return rest.demands()[kind] - counts[kind];
    }
  }

  private void extend(Branch branch, int from, int room, long needed) {
    effort.spend(8);
    isCutShort |= effort.isExhausted();
    if (isCutShort || branch.found.size() > branch.most) {
      return;
    }
    int kind = from;
    while (kind < packing.kinds() && (branch.left(kind) == 0 || packing.sizes()[kind] > room)) {
      kind++;
    }
    if (kind == packing.kinds()) {
      if (needed <= 0 && isFull(branch, room)) {
        branch.found.add(new CuttingPattern(branch.bin, branch.counts.clone()));
      }
      return;
    }
    if (outlook.most(kind, room) < needed) {
      return;
    }
    branch.counts[kind]++;
    extend(branch, kind, room - packing.sizes()[kind], needed - bound.price(kind));
    branch.counts[kind]--;
    extend(branch, kind + 1, room, needed);
  }

  private boolean isFull(Branch branch, int room) {
    for (int kind = packing.kinds() - 1; kind >= 0 && packing.sizes()[kind] <= room; kind--) {
      if (branch.left(kind) > 0) {
        return false;
      }
    }
    return true;
  }
}
