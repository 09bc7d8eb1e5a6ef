package plycrag.solve.guillotine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Cuts items from stock: least price, then fewest sheets, then the largest single offcut. The
 * package's page tells how.
 */
public final class Guillotine {
  private static final long SEED = 20_260_101;

  private static final long MOST_LOOKS = 100_000_000;

  /** A choice of sheets gets at least this part of all looks. */
  private static final int SHARES = 16;

  /** Counted steps of the search for a large offcut, at most. */
  private static final int GATHER_STEPS = 10_000;

  /** A step for the offcut costs about so many looks. */
  private static final int LOOKS_A_STEP = 50;

  private final GuillotineTask job;
  private final int bound;
  private final long looks;

  private Guillotine(GuillotineTask job, int looksPerItem) {
    this.job = job;
    bound = SheetBound.of(job);
    looks = Math.min(MOST_LOOKS, (long) looksPerItem * job.size());
  }

  /**
   * A plan for all items.
   *
   * @param looksPerItem how much work it may take: places that are looked at, for each item
   * @throws IllegalArgumentException if an item fits no stock kind that has sheets, even alone
   */
  public static GuillotinePlan plan(
      List<Item> items, List<StockKind> stock, Cutting cutting, int looksPerItem) {
    GuillotineTask job = new GuillotineTask(items, stock, cutting);
    return items.isEmpty()
        ? new GuillotinePlan(List.of(), List.of(), 0)
        : new Guillotine(job, looksPerItem).plan();
  }

  private GuillotinePlan plan() {
    Optional<Sheets> first = new FirstPlan(job, new SplittableRandom(SEED)).best(looks / 4);
    if (first.isEmpty()) {
      return fromAllStock();
    }
    return result(gathered(cheaper(first.get())), new int[0]);
  }

  /** The same sheets with a larger offcut; fewer of them where one came out empty on the way. */
  private Sheets gathered(Sheets sheets) {
    int steps = (int) Math.min(GATHER_STEPS, looks / LOOKS_A_STEP);
    new RuinAndRebuild(job, sheets, new int[0], new SplittableRandom(SEED)).gather(steps);
    Sheets filled = sheets.withoutEmpty();
    return filled.count() < sheets.count() ? gathered(filled) : filled;
  }

  /** Where limits leave little choice: as much as goes on all that there is. */
  private GuillotinePlan fromAllStock() {
    int[] most = IntStream.range(0, job.stock.size()).map(job::most).toArray();
    Sheets sheets = new Sheets(job, SheetChoice.of(job, most).kinds());
    int[] all = IntStream.range(0, job.size()).toArray();
    RuinAndRebuild search = new RuinAndRebuild(job, sheets, all, new SplittableRandom(SEED));
    boolean complete = search.fill(looks);
    Sheets filled = sheets.withoutEmpty();
    return result(complete ? gathered(cheaper(filled)) : filled, search.left());
  }

  private Sheets cheaper(Sheets known) {
    Sheets best = known;
    List<SheetChoice> choices = SheetChoices.betterThan(job, SheetChoice.of(job, known), bound);
    List<SheetChoice> failed = new ArrayList<>();
    for (SheetChoice choice : choices) {
      if (choice.isBetterThan(SheetChoice.of(job, best))
          && failed.stream().noneMatch(choice::isWithin)) {
        Optional<Sheets> filled = fill(choice, best, looks / Math.min(choices.size(), SHARES));
        filled.ifPresentOrElse(sheets -> {}, () -> failed.add(choice));
        best = filled.orElse(best);
      }
    }
    return best;
  }

  private Optional<Sheets> fill(SheetChoice choice, Sheets known, long share) {
    Sheets sheets = new Sheets(job, choice.kinds());
    int[] left = moveFullest(known, sheets);
    RuinAndRebuild search = new RuinAndRebuild(job, sheets, left, new SplittableRandom(SEED));
    return search.fill(share) ? Optional.of(sheets.withoutEmpty()) : Optional.empty();
  }

  /** Takes over as many full sheets as there are of each kind; returns the items of the others. */
  private int[] moveFullest(Sheets known, Sheets sheets) {
    Ruin others = new Ruin(job, new SplittableRandom(SEED));
    others.start(new int[0]);
    for (int sheet : fullestFirst(known)) {
      int empty =
          Arrays.stream(sheets.all())
              .filter(to -> sheets.slice(to) == null && sheets.kind(to) == known.kind(sheet))
              .findFirst()
              .orElse(-1);
      if (empty >= 0) {
        sheets.set(empty, known.slice(sheet));
      } else {
        others.empty(known.slice(sheet));
      }
    }
    return others.taken();
  }

  private static List<Integer> fullestFirst(Sheets sheets) {
    return IntStream.range(0, sheets.count())
        .boxed()
        .sorted(Comparator.comparingDouble(sheet -> -sheets.fill(sheet)))
        .toList();
  }

  private GuillotinePlan result(Sheets sheets, int[] left) {
    Arrangement layout = new Arrangement(job);
    List<CutSheet> laid =
        IntStream.range(0, sheets.count())
            .boxed()
            .sorted(Comparator.comparingInt(sheets::kind))
            .map(sheet -> layout.of(sheets, sheet))
            .toList();
    return new GuillotinePlan(laid, Arrays.stream(left).mapToObj(job.items::get).toList(), bound);
  }
}
