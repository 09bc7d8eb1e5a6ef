package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best set-out of a task: first the fewest lines dropped and then the largest move, for which
 * the stretches need not know each other; within that move, each stretch's members and moves.
 *
 * <p>Without the members of its bays no stretch costs more. Where it costs no more with as few
 * members as can be, at the few places that these have, no other place need be looked at.
 */
final class Solver {
  private final SteppedTask ground;
  private final SteppedTask bare;

  Solver(Task task) {
    ground = new SteppedTask(task);
    bare = new SteppedTask(task.withoutBays());
  }

  /** Where lines and members go, in steps. */
  static final class Plan {
    private final Integer[] places;
    private final List<List<Integer>> members;

    private Plan(Integer[] places, List<List<Integer>> members) {
      this.places = places;
      this.members = members;
    }

    /** The lines' places; null for one that is dropped. */
    Integer[] places() {
      return places.clone();
    }

    /** The members of each gap. */
    List<List<Integer>> members() {
      return members;
    }
  }

  /** Fewest lines dropped, then the least largest move, within a bound; see {@link Toll.Worst}. */
  long worst(int bound) {
    LineReach field = new LineReach(ground, bound);
    int dropped = 0;
    int move = 0;
    List<Stretch> open = new ArrayList<>();
    for (Stretch stretch : unsettled(field)) {
      long least = worst(bare, field, stretch, true);
      dropped += Toll.Worst.dropped(least);
      if (worst(ground, field, stretch, true) == least) {
        move = Math.max(move, Toll.Worst.move(least));
      } else {
        open.add(stretch);
      }
    }
    for (Stretch stretch : open) {
      long least = worst(bare, field, stretch, true);
      long found = worst(ground, field, stretch, true);
      boolean isBest = Toll.Worst.dropped(found) == Toll.Worst.dropped(least);
      if (!isBest || Toll.Worst.move(found) > move) {
        found = worst(ground, field, stretch, false);
      }
      dropped += Toll.Worst.dropped(found) - Toll.Worst.dropped(least);
      move = Math.max(move, Toll.Worst.move(found));
    }
    return Toll.Worst.of(dropped, move);
  }

  private static long worst(SteppedTask ground, LineReach field, Stretch stretch, boolean sparing) {
    return new Sweep(ground, field, stretch, new Toll.Worst(), sparing).cost();
  }

  /** The best plan in which no line moves further than a bound. */
  Plan best(int bound) {
    LineReach field = new LineReach(ground, bound);
    Integer[] places = Arrays.stream(ground.wanted).boxed().toArray(Integer[]::new);
    int[] counts = ground.gaps.stream().mapToInt(gap -> gap.atFirst.size()).toArray();
    for (Stretch stretch : unsettled(field)) {
      Arrays.fill(counts, stretch.from(), stretch.to(), 0);
      best(field, stretch).follow(places, counts);
    }
    return new Plan(places, new EvenedGaps(ground, places).members(counts));
  }

  private Sweep best(LineReach field, Stretch stretch) {
    Toll.Sum sum = sum(stretch, field.bound);
    Sweep sparing = new Sweep(ground, field, stretch, sum, true);
    int least = Toll.Worst.dropped(worst(bare, field, stretch, true));
    boolean isBest =
        sum.dropped(sparing.cost()) == least
            && sum.members(sparing.cost()) == ground.fewest(stretch);
    return isBest ? sparing : new Sweep(ground, field, stretch, sum, false);
  }

  private Toll.Sum sum(Stretch stretch, int bound) {
    int members =
        ground.gaps.subList(stretch.from(), stretch.to()).stream().mapToInt(Gap::room).sum();
    return Toll.Sum.of(bound, stretch.endLine() - stretch.firstLine(), members);
  }

  /** The stretches in which something is in the way. */
  private List<Stretch> unsettled(LineReach field) {
    List<Stretch> stretches = new ArrayList<>();
    int from = 0;
    int line = 0;
    for (int at = 1; at < ground.size(); at++) {
      MemberSite site = ground.site(at, field);
      if (site.isDivide()) {
        Stretch stretch = new Stretch(from, at, line, site.first);
        if (!ground.isSettled(stretch)) {
          stretches.add(stretch);
        }
        from = at;
        line = site.first;
      }
    }
    return stretches;
  }
}
