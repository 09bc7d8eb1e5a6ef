package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Search on a given set of sheets. Again and again takes items out of a few of them, puts these and
 * what is left over in again in a new order, and keeps the result unless it is worse by more than a
 * threshold that falls to 0. After G. Schrimpf et al., Record breaking optimization results using
 * the ruin and recreate principle, J. Computational Physics 159, 2000.
 */
final class RuinAndRebuild {
  private static final int MOST_SHEETS = 4;

  /** The most by which a step may be worse at the start, in sheets. */
  private static final double THRESHOLD = 0.02;

  /** What a step costs beside its looks, in looks; and one more for each sheet that is measured. */
  private static final int STEP = 20;

  private final GuillotineTask job;
  private final SplittableRandom random;
  private final Insertion insertion;
  private final Order order;
  private final Ruin ruin;
  private final Sheets sheets;
  private int[] left;
  private long steps;

  /**
   * Starts from sheets as they are, which the search changes.
   *
   * @param left the items that are not on them
   */
  RuinAndRebuild(GuillotineTask job, Sheets sheets, int[] left, SplittableRandom random) {
    this.job = job;
    this.random = random;
    this.sheets = sheets;
    this.left = left.clone();
    insertion = new Insertion(job, random);
    order = new Order(job, random);
    ruin = new Ruin(job, random);
  }

  int[] left() {
    return left.clone();
  }

  /** Searches until nothing is left over; false if so many looks are not enough. */
  boolean fill(long looks) {
    double measure = Goal.room(sheets, area(left));
    while (left.length > 0 && work() < looks) {
      measure = step(Goal::room, measure, 1 - (double) work() / looks);
    }
    return left.length == 0;
  }

  private long work() {
    return insertion.looks() + steps * (STEP + sheets.count());
  }

  /** Enlarges the largest offcut, in so many steps; nothing may be left over. */
  void gather(int steps) {
    Goal goal = (state, area) -> Goal.offcut(state, area, job.kerf);
    double measure = goal.measure(sheets, area(left));
    for (int step = 0; step < steps; step++) {
      measure = step(goal, measure, 0);
    }
  }

  private double step(Goal goal, double before, double heat) {
    steps++;
    int[] chosen = drawSheets();
    Slice[] kept = Arrays.stream(chosen).mapToObj(sheets::slice).toArray(Slice[]::new);
    ruin.start(left);
    for (int sheet : chosen) {
      sheets.set(sheet, ruin.take(sheets.slice(sheet)));
    }
    insertion.drawManner();
    int[] over = insertion.insertAll(order.draw(ruin.taken()), sheets, chosen);
    double after = goal.measure(sheets, area(over));
    boolean complete = over.length == 0 && left.length > 0;
    if (complete || after - before <= THRESHOLD * heat * random.nextDouble()) {
      left = over;
      return after;
    }
    for (int place = 0; place < chosen.length; place++) {
      sheets.set(chosen[place], kept[place]);
    }
    return before;
  }

  private int[] drawSheets() {
    int[] all = sheets.all();
    int count = Math.min(all.length, 1 + random.nextInt(MOST_SHEETS));
    for (int place = 0; place < count; place++) {
      int other = place + random.nextInt(all.length - place);
      int sheet = all[other];
      all[other] = all[place];
      all[place] = sheet;
    }
    return Arrays.copyOf(all, count);
  }

  private long area(int[] items) {
    long area = 0;
    for (int item : items) {
      area += job.area(item);
    }
    return area;
  }
}
