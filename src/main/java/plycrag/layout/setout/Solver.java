package plycrag.layout.setout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best set-out of a ground: first the fewest lines dropped and then the largest move, for which
 * the stretches need not know each other; within that move, each stretch's members and moves.
 */
final class Solver {
  private final Ground ground;

  Solver(Ground ground) {
    this.ground = ground;
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
    Field field = new Field(ground, bound);
    int dropped = 0;
    int move = 0;
    for (Stretch stretch : stretches(field)) {
      if (!ground.isSettled(stretch)) {
        long cost = new Sweep(ground, field, stretch, new Toll.Worst()).cost();
        dropped += Toll.Worst.dropped(cost);
        move = Math.max(move, Toll.Worst.move(cost));
      }
    }
    return ((long) dropped << Integer.SIZE) | move;
  }

  /** The best plan in which no line moves further than a bound. */
  Plan best(int bound) {
    Field field = new Field(ground, bound);
    Integer[] places = Arrays.stream(ground.wanted).boxed().toArray(Integer[]::new);
    int[] counts = ground.gaps.stream().mapToInt(gap -> gap.atFirst.size()).toArray();
    for (Stretch stretch : stretches(field)) {
      if (!ground.isSettled(stretch)) {
        Arrays.fill(counts, stretch.from(), stretch.to(), 0);
        new Sweep(ground, field, stretch, sum(stretch, bound)).follow(places, counts);
      }
    }
    return new Plan(places, new Evening(ground, places).members(counts));
  }

  private Toll sum(Stretch stretch, int bound) {
    int members =
        ground.gaps.subList(stretch.from(), stretch.to()).stream().mapToInt(Gap::room).sum();
    return Toll.Sum.of(bound, stretch.endLine() - stretch.firstLine(), members);
  }

  private List<Stretch> stretches(Field field) {
    List<Stretch> stretches = new ArrayList<>();
    int from = 0;
    int line = 0;
    for (int at = 1; at < ground.size(); at++) {
      Site site = ground.site(at, field);
      if (site.isDivide()) {
        stretches.add(new Stretch(from, at, line, site.first));
        from = at;
        line = site.first;
      }
    }
    return stretches;
  }
}
