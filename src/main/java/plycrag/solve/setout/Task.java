package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.List;

/**
 * One axis of a facet that is to be set out.
 *
 * @param lines ascending by their wanted places
 * @param keepouts in any order
 * @param fixed members that stay, ascending by their centres
 * @param bays ascending, at most one between two neighbouring fixed members
 * @param limits what to keep to
 */
public record Task(
    List<AskedLine> lines,
    List<ForbiddenStretch> keepouts,
    List<CrossingMember> fixed,
    List<Bay> bays,
    Limits limits) {
  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if lines, fixed members or bays are out of order, or a bay
   *     does not lie between two fixed members
   */
  public Task {
    lines = List.copyOf(lines);
    keepouts = List.copyOf(keepouts);
    fixed = List.copyOf(fixed);
    bays = List.copyOf(bays);
    requireAscending("lines", lines.stream().map(AskedLine::wanted).toList());
    requireAscending("fixed members", fixed.stream().map(CrossingMember::centre).toList());
    int next = 0;
    for (Bay bay : bays) {
      if (bay.after() < next || bay.after() > fixed.size() - 2) {
        throw new IllegalArgumentException("no room for a bay after member " + bay.after());
      }
      next = bay.after() + 1;
    }
  }

  private static void requireAscending(String what, List<Double> places) {
    for (int at = 1; at < places.size(); at++) {
      if (places.get(at) < places.get(at - 1)) {
        throw new IllegalArgumentException(what + " are not ascending: " + places);
      }
    }
  }

  /** Fixed members and those of the bays as they are laid out first, ascending. */
  public List<CrossingMember> membersAtFirst() {
    List<CrossingMember> all = new ArrayList<>();
    int bay = 0;
    for (int at = 0; at < fixed.size(); at++) {
      all.add(fixed.get(at));
      if (bay < bays.size() && bays.get(bay).after() == at) {
        all.addAll(bays.get(bay++).members());
      }
    }
    return all;
  }

  /** The same with every member fixed where it is laid out first. */
  Task withMembersFixed() {
    return new Task(lines, keepouts, membersAtFirst(), List.of(), limits);
  }

  /** The same with the members of the bays left out. */
  Task withoutBays() {
    return new Task(lines, keepouts, fixed, List.of(), limits);
  }
}
