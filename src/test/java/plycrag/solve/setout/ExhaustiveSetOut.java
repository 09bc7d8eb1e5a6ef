package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;

/**
 * Every set-out of a small task, in mm and with lines in any order; keeps the least cost. Shares no
 * code with the solver but the records.
 */
final class ExhaustiveSetOut {
  private static final double TOLERANCE = 1e-6;

  /** The greatest tolerance of a task. */
  private static final int MOST_STEPS = 5;

  /** Members beyond those laid out first, which are as few as can be. */
  private static final int MORE_MEMBERS = 1;

  private final Task task;
  private final Limits limits;
  private final List<List<Double>> bays = new ArrayList<>();
  private final Double[] places;
  private Cost best;

  private ExhaustiveSetOut(Task task) {
    this.task = task;
    limits = task.limits();
    places = new Double[task.lines().size()];
  }

  /** With members that move, one more in each bay than at first if that is better. */
  static Cost solve(Task task) {
    ExhaustiveSetOut search = new ExhaustiveSetOut(task);
    search.bay(0);
    return search.best;
  }

  /** With the members as they are laid out first. */
  static Cost nudge(Task task) {
    ExhaustiveSetOut search = new ExhaustiveSetOut(task);
    search.stay();
    search.line(0);
    return search.best;
  }

  /** With one amount for all lines. */
  static Cost shift(Task task) {
    ExhaustiveSetOut search = new ExhaustiveSetOut(task);
    search.stay();
    int most = (int) Math.floor((task.limits().tolerance() + TOLERANCE) / task.limits().step());
    for (int amount = -most; amount <= most; amount++) {
      search.shifted(0, amount * task.limits().step());
    }
    return search.best;
  }

  private void stay() {
    task.bays()
        .forEach(bay -> bays.add(bay.members().stream().map(CrossingMember::centre).toList()));
  }

  private void bay(int at) {
    if (at == task.bays().size()) {
      line(0);
      return;
    }
    bays.add(List.of());
    member(at, List.of());
    bays.remove(at);
  }

  /** Ends a bay with the members so far, if that keeps the spacing, or adds one more. */
  private void member(int at, List<Double> members) {
    Bay bay = task.bays().get(at);
    CrossingMember low = task.fixed().get(bay.after());
    CrossingMember high = task.fixed().get(bay.after() + 1);
    double half = bay.members().get(0).halfBreadth();
    double before = members.isEmpty() ? low.centre() : members.get(members.size() - 1);
    double beforeHalf = members.isEmpty() ? low.halfBreadth() : half;
    double rest = high.centre() - before;
    boolean touches = !members.isEmpty() && rest < half + high.halfBreadth() - TOLERANCE;
    if (rest <= bay.greatestSpacing() + TOLERANCE && !touches) {
      bays.set(at, members);
      bay(at + 1);
    }
    if (members.size() == bay.members().size() + MORE_MEMBERS) {
      return;
    }
    for (int step = 0; step * limits.step() < high.centre(); step++) {
      double centre = step * limits.step();
      double apart = centre - before;
      if (apart >= beforeHalf + half - TOLERANCE && apart <= bay.greatestSpacing() + TOLERANCE) {
        List<Double> more = new ArrayList<>(members);
        more.add(centre);
        member(at, more);
      }
    }
  }

  private void line(int at) {
    if (at == places.length) {
      judge();
      return;
    }
    places[at] = null;
    line(at + 1);
    double wanted = task.lines().get(at).wanted();
    long nearest = Math.round(wanted / limits.step());
    for (long step = nearest - MOST_STEPS; step <= nearest + MOST_STEPS; step++) {
      double place = step * limits.step();
      if (Math.abs(place - wanted) <= limits.tolerance() + TOLERANCE && isFree(at, place)) {
        places[at] = place;
        line(at + 1);
      }
    }
    places[at] = null;
  }

  private void shifted(int at, double amount) {
    if (at == places.length) {
      judge();
      return;
    }
    places[at] = null;
    shifted(at + 1, amount);
    double place = task.lines().get(at).wanted() + amount;
    if (isFree(at, place)) {
      places[at] = place;
      shifted(at + 1, amount);
    }
    places[at] = null;
  }

  private boolean isFree(int at, double place) {
    for (int other = 0; other < at; other++) {
      if (places[other] != null && Math.abs(places[other] - place) < limits.toLine() - TOLERANCE) {
        return false;
      }
    }
    return clears(task, bays, place);
  }

  /** Whether a place is clear of keep-outs and members. */
  static boolean clears(Task task, List<List<Double>> bays, double place) {
    boolean isOut =
        task.keepouts().stream()
            .noneMatch(one -> one.low() + TOLERANCE < place && place < one.high() - TOLERANCE);
    boolean clear =
        task.fixed().stream()
            .allMatch(one -> farEnough(place, one.centre(), one.halfBreadth(), task.limits()));
    for (int bay = 0; bay < bays.size(); bay++) {
      double half = task.bays().get(bay).members().get(0).halfBreadth();
      clear &= bays.get(bay).stream().allMatch(one -> farEnough(place, one, half, task.limits()));
    }
    return isOut && clear;
  }

  private static boolean farEnough(double place, double centre, double half, Limits limits) {
    return Math.abs(place - centre) - half >= limits.toMember() - TOLERANCE;
  }

  private void judge() {
    int dropped = 0;
    double largest = 0;
    double moves = 0;
    double lean = 0;
    for (int at = 0; at < places.length; at++) {
      if (places[at] == null) {
        dropped++;
      } else {
        double move = places[at] - task.lines().get(at).wanted();
        largest = Math.max(largest, Math.abs(move));
        moves += Math.abs(move);
        lean += move;
      }
    }
    int members = bays.stream().mapToInt(List::size).sum();
    Cost cost = new Cost(dropped, round(largest), members, round(moves), round(lean));
    if (best == null || cost.compareTo(best) < 0) {
      best = cost;
    }
  }

  /** To a millionth, so that sums in another order compare as equal. */
  static double round(double length) {
    return Math.rint(length * 1e6) / 1e6 + 0.0;
  }

  static Cost round(Cost cost) {
    return new Cost(
        cost.dropped(),
        round(cost.largestMove()),
        cost.members(),
        round(cost.moves()),
        round(cost.lean()));
  }
}
