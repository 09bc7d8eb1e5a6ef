package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Puts an item into slicing trees: beside or above any part, however deep, wherever all parts round
 * it can still give way. After C. Fleszar, Three insertion heuristics and a justification
 * improvement heuristic for two-dimensional bin packing with guillotine cuts, Computers & OR 40,
 * 2013.
 */
final class Insertion {
  private static final int ALL = 1024;

  private final GuillotineTask job;
  private final SplittableRandom random;
  private FitRule rule = FitRule.LEAST_WASTE;
  private int blink;
  private boolean firstSheet;
  private long looks;

  private boolean turned;
  private int itemWidth;
  private int itemHeight;
  private long itemArea;

  private long leastScore;
  private Slice place;
  private boolean placeAcross;
  private boolean placeTurned;

  Insertion(GuillotineTask job, SplittableRandom random) {
    this.job = job;
    this.random = random;
  }

  /** Draws how the next items are put in. */
  void drawManner() {
    FitRule[] rules = FitRule.values();
    rule = rules[random.nextInt(rules.length)];
    blink = random.nextInt(3) == 0 ? ALL / 20 : 0;
    firstSheet = random.nextBoolean();
  }

  /** How many parts have been looked at so far: the measure of work. */
  long looks() {
    return looks;
  }

  /**
   * Puts items in.
   *
   * @param items in the order in which they are put in
   * @param among the sheets that may take them
   * @return those for which there is no room
   */
  int[] insertAll(int[] items, Sheets sheets, int[] among) {
    return Arrays.stream(items).filter(item -> !insert(item, sheets, among)).toArray();
  }

  /** Puts an item on a sheet that has parts, or else on an empty one; false if there is no room. */
  boolean insert(int item, Sheets sheets, int[] among) {
    int chosen = -1;
    place = null;
    leastScore = Long.MAX_VALUE;
    for (int sheet : among) {
      if (sheets.slice(sheet) != null && improves(item, sheets, sheet)) {
        chosen = sheet;
        if (firstSheet) {
          break;
        }
      }
    }
    if (chosen < 0) {
      return open(item, sheets, among);
    }
    Slice pair = new Slice(place, new Slice(job, item, placeTurned), placeAcross);
    sheets.set(chosen, sheets.slice(chosen).exchange(place, pair));
    return true;
  }

  private boolean improves(int item, Sheets sheets, int sheet) {
    long before = leastScore;
    look(item, false, sheets, sheet);
    if (job.mayTurn(item)) {
      look(item, true, sheets, sheet);
    }
    return leastScore < before;
  }

  private void look(int item, boolean turn, Sheets sheets, int sheet) {
    turned = turn;
    itemWidth = job.width(item, turn);
    itemHeight = job.height(item, turn);
    itemArea = job.area(item);
    look(sheets.slice(sheet), sheets.width(sheet), sheets.height(sheet));
  }

  /** The room is what the part can grow to while its sheet still holds all the others. */
  private void look(Slice part, int roomWidth, int roomHeight) {
    looks++;
    if (itemWidth > roomWidth
        || itemHeight > roomHeight
        || (long) roomWidth * roomHeight - part.area < itemArea) {
      return;
    }
    weigh(part, roomWidth, roomHeight, true);
    weigh(part, roomWidth, roomHeight, false);
    if (part.isItem()) {
      return;
    }
    if (part.across) {
      look(part.near, roomWidth - part.far.width, roomHeight);
      look(part.far, roomWidth - part.near.width, roomHeight);
    } else {
      look(part.near, roomWidth, roomHeight - part.far.height);
      look(part.far, roomWidth, roomHeight - part.near.height);
    }
  }

  private void weigh(Slice part, int roomWidth, int roomHeight, boolean across) {
    int freeAlong = across ? roomWidth - part.width : roomHeight - part.height;
    int freeSide = across ? roomHeight : roomWidth;
    int along = across ? itemWidth : itemHeight;
    int side = across ? itemHeight : itemWidth;
    if (along > freeAlong || side > freeSide || blinks()) {
      return;
    }
    long score =
        switch (rule) {
          case LEAST_WASTE -> waste(part, across);
          case LEAST_SHORT_SIDE -> Math.min(freeAlong - along, freeSide - side);
          case LEAST_LONG_SIDE -> Math.max(freeAlong - along, freeSide - side);
          case LEAST_AREA -> (long) freeAlong * freeSide;
          case EQUAL_EDGES -> Math.abs(step(part, across));
        };
    if (score < leastScore) {
      take(part, across, score);
    }
  }

  private boolean blinks() {
    return blink > 0 && random.nextInt(ALL) < blink;
  }

  private void take(Slice part, boolean across, long score) {
    leastScore = score;
    place = part;
    placeAcross = across;
    placeTurned = turned;
  }

  private int step(Slice part, boolean across) {
    return across ? part.height - itemHeight : part.width - itemWidth;
  }

  private long waste(Slice part, boolean across) {
    int step = step(part, across);
    if (step >= 0) {
      return (long) step * (across ? itemWidth : itemHeight);
    }
    return -(long) step * (across ? part.width : part.height);
  }

  private boolean open(int item, Sheets sheets, int[] among) {
    for (int sheet : among) {
      if (sheets.slice(sheet) == null && job.fits(item, sheets.kind(sheet))) {
        sheets.set(sheet, new Slice(job, item, drawTurn(item, sheets.kind(sheet))));
        return true;
      }
    }
    return false;
  }

  private boolean drawTurn(int item, int kind) {
    boolean either = job.mayTurn(item) && job.fits(item, kind, true);
    return either && (random.nextBoolean() || !job.fits(item, kind, false));
  }
}
