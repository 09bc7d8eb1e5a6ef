package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The choices of sheets that are better than one that is known, and may hold all items. */
final class SheetChoices {
  /** No more choices than this are listed, and no more than {@link #TRIED} kept, evenly spread. */
  private static final int LISTED = 100_000;

  private static final int TRIED = 64;

  private final GuillotineTask job;
  private final SheetChoice known;
  private final int bound;
  private final long itemArea;
  private final int[] counts;
  private final List<SheetChoice> found = new ArrayList<>();

  private SheetChoices(GuillotineTask job, SheetChoice known, int bound) {
    this.job = job;
    this.known = known;
    this.bound = bound;
    itemArea = job.itemArea();
    counts = new int[job.stock.size()];
  }

  /** Dearest first, as these are the easiest to fill. */
  static List<SheetChoice> betterThan(GuillotineTask job, SheetChoice known, int bound) {
    SheetChoices choices = new SheetChoices(job, known, bound);
    choices.extend(0);
    choices.found.sort(
        Comparator.comparingLong(SheetChoice::price)
            .thenComparingInt(SheetChoice::sheets)
            .thenComparingLong(SheetChoice::area)
            .reversed());
    return thinned(choices.found);
  }

  private static List<SheetChoice> thinned(List<SheetChoice> all) {
    if (all.size() <= TRIED) {
      return all;
    }
    return IntStream.range(0, TRIED)
        .mapToObj(place -> all.get((int) ((long) place * all.size() / TRIED)))
        .toList();
  }

  private void extend(int kind) {
    if (kind == counts.length) {
      keep(SheetChoice.of(job, counts));
      return;
    }
    for (int count = 0; count <= job.most(kind) && found.size() < LISTED; count++) {
      counts[kind] = count;
      SheetChoice part = SheetChoice.of(job, counts);
      if (part.price() > known.price() || part.sheets() > 2 * known.sheets()) {
        break;
      }
      extend(kind + 1);
    }
    counts[kind] = 0;
  }

  private void keep(SheetChoice choice) {
    if (choice.isBetterThan(known)
        && choice.sheets() >= bound
        && choice.area() >= itemArea
        && everyItemFits(choice)) {
      found.add(choice);
    }
  }

  private boolean everyItemFits(SheetChoice choice) {
    int[] used =
        IntStream.range(0, counts.length).filter(kind -> choice.counts().get(kind) > 0).toArray();
    return IntStream.range(0, job.size())
        .allMatch(item -> IntStream.of(used).anyMatch(kind -> job.fits(item, kind)));
  }
}
