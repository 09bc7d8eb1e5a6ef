package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The least cost of a stretch, by dynamic programming from its upper end over all places of its
 * members.
 *
 * <p>Cost: for each place of a member, the places of the lines within the greatest spacing below it
 * and the places of the member before it.
 */
final class Sweep {
  private final SteppedTask ground;
  private final LineReach field;
  private final Stretch stretch;
  private final Toll toll;
  private final MemberSite[] fixed;

  /**
   * Sweeps a stretch.
   *
   * @param sparing whether to look only where members stand when they are as few as can be
   */
  Sweep(SteppedTask ground, LineReach field, Stretch stretch, Toll toll, boolean sparing) {
    this.ground = ground;
    this.field = field;
    this.stretch = stretch;
    this.toll = toll;
    fixed = new MemberSite[stretch.to() - stretch.from() + 1];
    for (int at = 0; at < fixed.length; at++) {
      fixed[at] = ground.site(stretch.from() + at, field);
    }
    fixed[fixed.length - 1].close();
    for (int at = fixed.length - 2; at >= 0; at--) {
      cross(at, sparing);
    }
  }

  /** Carries the costs at the fixed place above a gap down to the one below. */
  private void cross(int at, boolean sparing) {
    int number = stretch.from() + at;
    Gap gap = ground.gaps.get(number);
    NavigableMap<Integer, MemberSite> places = new TreeMap<>();
    for (int place = gap.from; place <= gap.to; place++) {
      if (!sparing || gap.isSparing(place)) {
        places.put(place, ground.site(number, place, field));
      }
    }
    carry(fixed[at + 1], 0, below(fixed[at], gap.direct, places.tailMap(gap.lastFrom, true)));
    for (Map.Entry<Integer, MemberSite> one : places.descendingMap().entrySet()) {
      int place = one.getKey();
      int least = Math.max(1, gap.least);
      Map<Integer, MemberSite> near =
          places.subMap(place - Math.max(least, gap.most), place - least + 1);
      carry(one.getValue(), toll.member(), below(fixed[at], place <= gap.firstTo, near));
    }
  }

  /** The sites that can come before another, the lowest first. */
  private static List<MemberSite> below(
      MemberSite low, boolean isNext, Map<Integer, MemberSite> others) {
    List<MemberSite> below = new ArrayList<>();
    if (isNext) {
      below.add(low);
    }
    below.addAll(others.values());
    return below;
  }

  /** Offers the ways over one site to those below it. */
  private void carry(MemberSite above, long price, List<MemberSite> below) {
    if (below.isEmpty()) {
      return;
    }
    for (int end = above.first; end <= above.last; end++) {
      if (above.cost(end, 0) < MemberSite.NEVER) {
        MemberSite.Step step = new MemberSite.Step(above, end);
        LineRun run = new LineRun(field, toll, above, below.get(0).first, end);
        below.forEach(site -> offer(site, run, price, step));
      }
    }
  }

  private static void offer(MemberSite below, LineRun run, long price, MemberSite.Step step) {
    for (int line = below.first; line <= Math.min(below.last, step.line()); line++) {
      for (int excess = 0; excess < below.excesses(line); excess++) {
        long cost = price + run.cost(line, below.high + excess);
        below.offer(line, excess, cost, step);
      }
    }
  }

  /** The least cost. */
  long cost() {
    return fixed[0].cost(stretch.firstLine(), 0);
  }

  /** Notes the lines' places, and how many members each gap gets. */
  void follow(Integer[] places, int[] members) {
    int line = stretch.firstLine();
    int excess = 0;
    int gap = 0;
    MemberSite site = fixed[0];
    while (gap < fixed.length - 1) {
      MemberSite.Step step = site.next(line, excess);
      LineRun run = new LineRun(field, toll, step.site(), line, step.line());
      int from = run.follow(line, site.high + excess, places);
      if (step.site() == fixed[gap + 1]) {
        gap++;
      } else {
        members[stretch.from() + gap]++;
      }
      site = step.site();
      line = step.line();
      excess = site.excess(line, from);
    }
  }
}
