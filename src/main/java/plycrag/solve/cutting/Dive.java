package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds a relaxation by fixing what is nearly whole and relaxing the rest anew, down to nothing;
 * comes back where the bound says that nothing lighter lies below, and tries the next best pattern,
 * as often as a number of discrepancies allows (Harvey and Ginsberg 1995).
 */
final class Dive {
  private static final double NEARLY = 0.75;

  private final Packing packing;
  private final Incumbent incumbent;
  private final Effort effort;
  private final ColumnGeneration columns;

  Dive(Packing packing, Incumbent incumbent, Effort effort) {
    this.packing = packing;
    this.incumbent = incumbent;
    this.effort = effort;
    this.columns = new ColumnGeneration(packing, incumbent, effort);
  }

  /** Relaxes the whole; raises the bound. */
  ColumnGeneration.Relaxation root(List<CuttingPattern> known) {
    ColumnGeneration.Relaxation root = columns.relax(Remainder.all(packing), known);
    incumbent.raise(root.bound().of(Remainder.all(packing)));
    return root;
  }

  /** Dives below a relaxation. */
  void below(Remainder rest, ColumnGeneration.Relaxation relaxed, int discrepancies) {
    List<Remainder> children = children(rest, relaxed);
    for (int i = 0; i < Math.min(children.size(), discrepancies + 1); i++) {
      if (incumbent.isProven() || effort.isExhausted()) {
        return;
      }
      dive(children.get(i), relaxed.patterns(), discrepancies - i);
    }
  }

  private void dive(Remainder rest, List<CuttingPattern> known, int discrepancies) {
    if (rest.isEmpty()) {
      incumbent.offer(rest);
      return;
    }
    ColumnGeneration.Relaxation relaxed = columns.relax(rest, known);
    if (rest.spent() + relaxed.bound().of(rest) < incumbent.weight()) {
      below(rest, relaxed, discrepancies);
    }
  }

  private List<Remainder> children(Remainder rest, ColumnGeneration.Relaxation relaxed) {
    Remainder whole = rest;
    List<Integer> parts = new ArrayList<>();
    for (int column = 0; column < relaxed.uses().length; column++) {
      double use = relaxed.uses()[column];
      whole = fix(whole, relaxed.patterns().get(column), (int) Math.floor(use + Rounding.USE));
      if (use - Math.floor(use + Rounding.USE) > Rounding.USE) {
        parts.add(column);
      }
    }
    parts.sort(Comparator.comparingDouble(column -> -fraction(relaxed.uses()[column])));
    return branches(rest, whole, relaxed, parts);
  }

  private List<Remainder> branches(
      Remainder rest, Remainder whole, ColumnGeneration.Relaxation relaxed, List<Integer> parts) {
    if (parts.isEmpty()) {
      return List.of(whole);
    }
    Remainder bulk = whole;
    int most = Math.max(1, parts.size() / 8);
    for (int i = 0; i < most; i++) {
      if (i == 0 || fraction(relaxed.uses()[parts.get(i)]) > NEARLY) {
        bulk = fix(bulk, relaxed.patterns().get(parts.get(i)), 1);
      }
    }
    List<Remainder> children = new ArrayList<>(List.of(bulk));
    IntStream.range(0, parts.size())
        .mapToObj(i -> fix(rest, relaxed.patterns().get(parts.get(i)), 1))
        .filter(child -> child.filled().size() > rest.filled().size())
        .forEach(children::add);
    return children;
  }

  private Remainder fix(Remainder rest, CuttingPattern pattern, int times) {
    int room = Math.min(times, rest.room(pattern));
    return room > 0 ? rest.after(packing, pattern, room) : rest;
  }

  private static double fraction(double use) {
    return use - Math.floor(use + Rounding.USE);
  }
}
