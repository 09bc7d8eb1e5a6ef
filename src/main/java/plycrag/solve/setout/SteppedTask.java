package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A task in steps of the marking grid. */
final class SteppedTask {
  final Steps steps;
  final int[] wanted;

  /** Least distance between lines. */
  final int apart;

  /** Between the fixed members, and before the first and after the last. */
  final List<Gap> gaps = new ArrayList<>();

  final Blocked keepouts;
  private final Blocked atFirst;

  /**
   * For the low end, each fixed member and the high end: the last place before, the first after.
   */
  private final int[] lows;

  private final int[] highs;

  SteppedTask(Task task) {
    Limits limits = task.limits();
    steps = new Steps(limits.step());
    wanted = task.lines().stream().mapToInt(line -> steps.nearest(line.wanted())).toArray();
    apart = steps.up(limits.toLine());
    keepouts = new Blocked(task.keepouts(), steps);
    List<ForbiddenStretch> all = new ArrayList<>(task.keepouts());
    task.membersAtFirst().forEach(member -> all.add(member.keepout(limits.toMember())));
    atFirst = new Blocked(all, steps);
    lows = new int[task.fixed().size() + 2];
    highs = new int[lows.length];
    placeEnds(task);
    placeGaps(task);
  }

  /**
   * A line below a member's centre lies below all that the members above cover, too; so the places
   * ascend from member to member even where members overlap.
   */
  private void placeEnds(Task task) {
    int end = lows.length - 1;
    Arrays.fill(lows, -Steps.NEVER);
    Arrays.fill(highs, -Steps.NEVER);
    lows[0] = Steps.NEVER;
    highs[0] = Steps.NEVER;
    for (int at = 1; at < end; at++) {
      ForbiddenStretch keepout = task.fixed().get(at - 1).keepout(task.limits().toMember());
      lows[at] = steps.down(keepout.low());
      highs[at] = Math.max(highs[at - 1], steps.up(keepout.high()));
    }
    for (int at = end - 1; at > 0; at--) {
      lows[at] = Math.min(lows[at], lows[at + 1]);
    }
  }

  private void placeGaps(Task task) {
    for (int at = 0; at <= task.fixed().size(); at++) {
      gaps.add(new Gap());
    }
    for (Bay bay : task.bays()) {
      CrossingMember low = task.fixed().get(bay.after());
      CrossingMember high = task.fixed().get(bay.after() + 1);
      gaps.set(bay.after() + 1, new Gap(low, high, bay, task.limits()));
    }
  }

  /** How many fixed places there are, both ends included. */
  int size() {
    return lows.length;
  }

  /** A fixed place as a site. */
  MemberSite site(int at, LineReach field) {
    return new MemberSite(field, lows[at], highs[at]);
  }

  /** A member of a gap as a site. */
  MemberSite site(int gap, int place, LineReach field) {
    int reach = gaps.get(gap).reach;
    int low = Math.min(place - reach, lows[gap + 1]);
    return new MemberSite(field, low, Math.max(place + reach, highs[gap]));
  }

  /** Whether a line may lie on a step while the members stand as laid out first. */
  boolean isFreeAtFirst(int step) {
    return !atFirst.has(step);
  }

  /** As few members as the gaps of a stretch allow. */
  int fewest(Stretch stretch) {
    return gaps.subList(stretch.from(), stretch.to()).stream().mapToInt(Gap::fewest).sum();
  }

  /** Whether lines and the gaps' members can stay, and with as few members as can be. */
  boolean isSettled(Stretch stretch) {
    for (int line = stretch.firstLine(); line < stretch.endLine(); line++) {
      boolean crowded = line > stretch.firstLine() && wanted[line] - wanted[line - 1] < apart;
      if (crowded || !isFreeAtFirst(wanted[line])) {
        return false;
      }
    }
    return gaps.subList(stretch.from(), stretch.to()).stream()
        .allMatch(gap -> gap.atFirst.size() == gap.fewest());
  }
}
