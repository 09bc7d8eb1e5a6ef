package plycrag.layout.setout;

import java.util.List;
import java.util.function.Consumer;

/**
 * The least cost of a stretch, by dynamic programming from its upper end over all places of its
 * members.
 *
 * <p>Cost: for each place of a member, the places of the lines within the greatest spacing below it
 * and the places of the member before it.
 */
final class Sweep {
  private final Ground ground;
  private final Field field;
  private final Stretch stretch;
  private final Toll toll;
  private final Site[] fixed;

  Sweep(Ground ground, Field field, Stretch stretch, Toll toll) {
    this.ground = ground;
    this.field = field;
    this.stretch = stretch;
    this.toll = toll;
    fixed = new Site[stretch.to() - stretch.from() + 1];
    for (int at = 0; at < fixed.length; at++) {
      fixed[at] = ground.site(stretch.from() + at, field);
    }
    fixed[fixed.length - 1].close();
    for (int at = fixed.length - 2; at >= 0; at--) {
      cross(at);
    }
  }

  /** Carries the costs at the fixed place above a gap down to the one below. */
  private void cross(int at) {
    Gap gap = ground.gaps.get(stretch.from() + at);
    Site[] places = new Site[Math.max(0, gap.to - gap.from + 1)];
    for (int place = 0; place < places.length; place++) {
      places[place] = ground.site(stretch.from() + at, gap.from + place, field);
    }
    List<Site> sites = List.of(places);
    Site low = fixed[at];
    int lastFrom = Math.max(0, Math.min(places.length, gap.lastFrom - gap.from));
    carry(fixed[at + 1], 0, gap.direct, low, sites.subList(lastFrom, places.length));
    for (int place = places.length - 1; place >= 0; place--) {
      int from = Math.max(0, place - gap.most);
      int to = Math.max(from, place - Math.max(1, gap.least) + 1);
      boolean isFirst = gap.from + place <= gap.firstTo;
      carry(places[place], toll.member(), isFirst, low, sites.subList(from, to));
    }
  }

  /** Offers the ways over one site to those that it can follow. */
  private void carry(Site above, long price, boolean toLow, Site low, List<Site> others) {
    Site lowest = toLow || others.isEmpty() ? low : others.get(0);
    for (int end = above.first; end <= above.last; end++) {
      if (above.cost(end, 0) < Site.NEVER) {
        Site.Step step = new Site.Step(above, end);
        Run run = new Run(field, toll, above, lowest.first, end);
        Consumer<Site> offer = below -> offer(below, run, price, step);
        others.forEach(offer);
        if (toLow) {
          offer.accept(low);
        }
      }
    }
  }

  private static void offer(Site below, Run run, long price, Site.Step step) {
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
    Site site = fixed[0];
    while (gap < fixed.length - 1) {
      Site.Step step = site.next(line, excess);
      Run run = new Run(field, toll, step.site(), line, step.line());
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
