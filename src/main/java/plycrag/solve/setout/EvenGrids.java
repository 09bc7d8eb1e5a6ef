package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which even grids clear everything that lies across an axis, with the members where they are laid
 * out first. A grid fills the stretch between the setbacks: it begins less than a pitch after the
 * lower end and ends less than a pitch before the upper one.
 *
 * <p>Cost: for each pitch looked at, the pitch in steps and the number of keep-outs.
 */
public final class EvenGrids {
  private final Steps steps;
  private final int low;
  private final int high;
  private final int apart;
  private final List<ForbiddenStretch> keepouts;

  /**
   * For one axis.
   *
   * @param task whose lines and tolerance do not count
   * @param low the first place that a line may have, mm
   * @param high the last place that a line may have, mm
   */
  public EvenGrids(Task task, double low, double high) {
    steps = new Steps(task.limits().step());
    this.low = steps.up(low);
    this.high = steps.down(high);
    apart = steps.up(task.limits().toLine());
    keepouts = new ArrayList<>(task.keepouts());
    task.membersAtFirst().forEach(one -> keepouts.add(one.keepout(task.limits().toMember())));
  }

  /**
   * The grid that clears everything with the pitch nearest to a wanted one, then the start nearest
   * to the wanted one; of two equally near the lower. Empty if there is none of two lines or more.
   */
  public Optional<EvenGrid> nearest(EvenGrid wanted) {
    int pitch = steps.nearest(wanted.pitch());
    int start = steps.nearest(wanted.start());
    for (int off = 0; pitch - off >= 1 || pitch + off <= high - low; off++) {
      for (int one : new int[] {pitch - off, pitch + off}) {
        Optional<EvenGrid> found = at(one, start);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<EvenGrid> at(int pitch, int wanted) {
    if (pitch < Math.max(1, apart) || pitch > high - low) {
      return Optional.empty();
    }
    boolean[] blocked = blocked(keepouts, pitch);
    int best = -1;
    for (int at = 0; at < pitch; at++) {
      boolean nearer = best < 0 || Math.abs(low + at - wanted) < Math.abs(low + best - wanted);
      best = !blocked[at] && nearer ? at : best;
    }
    return best < 0
        ? Optional.empty()
        : Optional.of(new EvenGrid(steps.length(low + best), steps.length(pitch)));
  }

  /**
   * What stands in the way of a pitch from any start: keep-outs and members of which none can be
   * left out, found by leaving out one after the other. Empty if some start clears everything.
   */
  public List<String> conflict(double pitch) {
    int wanted = Math.max(1, steps.nearest(pitch));
    List<ForbiddenStretch> needed =
        Conflict.irreducible(keepouts, some -> isHopeless(blocked(some, wanted)));
    return needed.stream().map(ForbiddenStretch::name).toList();
  }

  private static boolean isHopeless(boolean... blocked) {
    for (boolean one : blocked) {
      if (!one) {
        return false;
      }
    }
    return true;
  }

  /** For each start, from the lowest one on, whether a line of its grid is blocked. */
  private boolean[] blocked(List<ForbiddenStretch> some, int pitch) {
    int[] changes = new int[pitch + 1];
    for (ForbiddenStretch keepout : some) {
      int from = Math.max(low, steps.down(keepout.low()) + 1);
      int to = Math.min(high, steps.up(keepout.high()) - 1);
      if (from <= to) {
        mark(from - low, Math.min(to - from + 1, pitch), changes);
      }
    }
    boolean[] blocked = new boolean[pitch];
    for (int at = 0, over = 0; at < pitch; at++) {
      over += changes[at];
      blocked[at] = over > 0;
    }
    return blocked;
  }

  private static void mark(int from, int length, int... changes) {
    int pitch = changes.length - 1;
    int first = from % pitch;
    int past = Math.max(0, first + length - pitch);
    changes[first]++;
    changes[first + length - past]--;
    if (past > 0) {
      changes[0]++;
      changes[past]--;
    }
  }
}
