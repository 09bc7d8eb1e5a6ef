package plycrag.solve.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import plycrag.geometry.Tolerance;

/** Finds what stands in the way of lines where they are asked for. */
final class BlockerSearch {
  private final Task task;
  private final Steps steps;

  /** Members' and others' keep-outs by their lower ends, and the greatest extent of any finite. */
  private final TreeMap<Double, List<ForbiddenStretch>> byLow = new TreeMap<>();

  private final List<ForbiddenStretch> endless = new ArrayList<>();
  private double longest;

  BlockerSearch(Task task) {
    this.task = task;
    steps = new Steps(task.limits().step());
    for (CrossingMember member : task.membersAtFirst()) {
      add(member.keepout(task.limits().toMember()));
    }
    task.keepouts().forEach(this::add);
  }

  private void add(ForbiddenStretch keepout) {
    double extent = keepout.high() - keepout.low();
    if (Double.isInfinite(extent)) {
      endless.add(keepout);
    } else {
      longest = Math.max(longest, extent);
      byLow.computeIfAbsent(keepout.low(), low -> new ArrayList<>()).add(keepout);
    }
  }

  /** What blocks a line, the worst first. */
  List<Blocker> of(int line) {
    double place = wanted(line);
    List<Blocker> found = new ArrayList<>();
    for (ForbiddenStretch keepout : near(place, place)) {
      double within = Math.min(place - keepout.low(), keepout.high() - place);
      addIfShort(keepout.name(), within, found);
    }
    for (int other : new int[] {line - 1, line + 1}) {
      if (other >= 0 && other < task.lines().size()) {
        double within = task.limits().toLine() - Math.abs(wanted(other) - place);
        addIfShort(task.lines().get(other).name(), within, found);
      }
    }
    found.sort(Comparator.comparingDouble(blocker -> -blocker.shortfall()));
    return found;
  }

  /** The keep-outs that may cover some of a stretch. */
  List<ForbiddenStretch> near(double low, double high) {
    List<ForbiddenStretch> near = new ArrayList<>(endless);
    byLow.subMap(low - longest, true, high, true).values().forEach(near::addAll);
    return near;
  }

  private double wanted(int line) {
    return steps.length(steps.nearest(task.lines().get(line).wanted()));
  }

  private static void addIfShort(String name, double shortfall, List<Blocker> found) {
    if (Tolerance.isSome(shortfall)) {
      found.add(new Blocker(name, shortfall));
    }
  }
}
