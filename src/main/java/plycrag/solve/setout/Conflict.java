package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Why something does not fit: limits of which none can be left out. */
public final class Conflict {
  private Conflict() {}

  /**
   * What keeps a dropped line from every place within the tolerance, with the members and the other
   * lines where the result has them. Empty if the line has a place.
   */
  public static List<String> of(Task task, Result result, int line) {
    if (result.lines().get(line).place().isPresent()) {
      return List.of();
    }
    Steps steps = new Steps(task.limits().step());
    int wanted = steps.nearest(task.lines().get(line).wanted());
    int tolerance = steps.down(task.limits().tolerance());
    Predicate<List<ForbiddenStretch>> covers =
        some -> {
          Blocked blocked = new Blocked(some, steps);
          return IntStream.rangeClosed(wanted - tolerance, wanted + tolerance)
              .allMatch(blocked::has);
        };
    List<ForbiddenStretch> all = near(task, result, task.lines().get(line).wanted());
    return irreducible(all, covers).stream().map(ForbiddenStretch::name).toList();
  }

  private static List<ForbiddenStretch> near(Task task, Result result, double wanted) {
    List<ForbiddenStretch> all = new ArrayList<>(task.keepouts());
    members(task, result).forEach(one -> all.add(one.keepout(task.limits().toMember())));
    for (SetLine other : result.lines()) {
      OptionalDouble place = other.place();
      if (place.isPresent()) {
        CrossingMember body = new CrossingMember(other.line().name(), place.getAsDouble(), 0);
        all.add(body.keepout(task.limits().toLine()));
      }
    }
    double reach = task.limits().tolerance() + task.limits().step();
    all.removeIf(one -> one.high() < wanted - reach || one.low() > wanted + reach);
    return all;
  }

  private static List<CrossingMember> members(Task task, Result result) {
    List<CrossingMember> members = new ArrayList<>(task.fixed());
    for (int at = 0; at < task.bays().size(); at++) {
      Bay bay = task.bays().get(at);
      for (double centre : result.bays().get(at)) {
        members.add(new CrossingMember(bay.name(centre), centre, bay.halfBreadth()));
      }
    }
    return members;
  }

  /**
   * Limits that conflict and of which none can be left out; by the deletion filter: each in turn is
   * left out for good if the others still conflict. Empty if all together do not conflict.
   *
   * <p>Cost: one question for each limit.
   */
  static <T> List<T> irreducible(List<T> limits, Predicate<List<T>> conflict) {
    if (!conflict.test(limits)) {
      return List.of();
    }
    List<T> needed = new ArrayList<>(limits);
    for (T limit : limits) {
      List<T> others = new ArrayList<>(needed);
      others.remove(limit);
      if (conflict.test(others)) {
        needed = others;
      }
    }
    return needed;
  }
}
