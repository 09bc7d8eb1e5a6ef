package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** The cheapest of several plans that open sheets as they need them. */
final class FirstPlan {
  private static final int TRIALS = 60;

  private final GuillotineTask job;
  private final SplittableRandom random;
  private final Insertion insertion;
  private final Order order;

  FirstPlan(GuillotineTask job, SplittableRandom random) {
    this.job = job;
    this.random = random;
    insertion = new Insertion(job, random);
    order = new Order(job, random);
  }

  /**
   * The best plan of all trials; empty if in every one the stock ran out.
   *
   * @param looks after so many no further trial is begun
   */
  Optional<Sheets> best(long looks) {
    Sheets best = null;
    for (int trial = 0; trial < TRIALS && insertion.looks() < looks; trial++) {
      Optional<Sheets> plan = trial();
      if (plan.isPresent() && (best == null || cheaper(plan.get(), best))) {
        best = plan.get();
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean cheaper(Sheets one, Sheets other) {
    boolean fewer = one.count() < other.count();
    return one.price() < other.price() || (one.price() == other.price() && fewer);
  }

  private Optional<Sheets> trial() {
    insertion.drawManner();
    int[] preference = drawPreference();
    Sheets sheets = new Sheets(job, new int[0]);
    for (int item : order.draw(IntStream.range(0, job.size()).toArray())) {
      if (!insertion.insert(item, sheets, sheets.all())) {
        int kind = next(item, preference, sheets);
        if (kind < 0) {
          return Optional.empty();
        }
        sheets = sheets.with(kind);
        insertion.insert(item, sheets, new int[] {sheets.count() - 1});
      }
    }
    return Optional.of(sheets);
  }

  /** The kinds by price for their area, or, every second time, in any order. */
  private int[] drawPreference() {
    boolean byPrice = random.nextBoolean();
    double[] keys =
        IntStream.range(0, job.stock.size())
            .mapToDouble(kind -> byPrice ? priceOfArea(kind) : random.nextDouble())
            .toArray();
    return IntStream.range(0, keys.length)
        .boxed()
        .sorted(Comparator.comparingDouble(kind -> keys[kind]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private double priceOfArea(int kind) {
    return (double) job.stock.get(kind).price() / job.sheetArea(kind);
  }

  private int next(int item, int[] preference, Sheets sheets) {
    return Arrays.stream(preference)
        .filter(kind -> job.fits(item, kind) && used(kind, sheets) < job.most(kind))
        .findFirst()
        .orElse(-1);
  }

  private static long used(int kind, Sheets sheets) {
    return Arrays.stream(sheets.all()).filter(sheet -> sheets.kind(sheet) == kind).count();
  }
}
