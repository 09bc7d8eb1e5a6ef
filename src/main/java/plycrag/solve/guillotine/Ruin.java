package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Takes items out of a slice: all, scattered ones, or those of one part. */
final class Ruin {
  private static final int ALL = 1024;
  private static final int FEWEST = 100;
  private static final int SPREAD = 500;

  /** One in so many parts on the way down is taken out whole. */
  private static final int WHOLE = 8;

  private final SplittableRandom random;
  private final int[] taken;
  private int count;
  private int manner;

  Ruin(GuillotineTask job, SplittableRandom random) {
    this.random = random;
    taken = new int[job.size()];
  }

  /** Draws what is taken from the next slices, and starts with these items as taken. */
  void start(int[] items) {
    System.arraycopy(items, 0, taken, 0, items.length);
    count = items.length;
    manner = random.nextInt(3);
  }

  int[] taken() {
    return Arrays.copyOf(taken, count);
  }

  /** What stays of a slice; null if nothing does or nothing was. */
  Slice take(Slice slice) {
    if (slice == null || manner == 0) {
      return empty(slice);
    }
    return manner == 1 ? thin(slice, FEWEST + random.nextInt(SPREAD)) : without(slice);
  }

  /** Takes every item. */
  Slice empty(Slice slice) {
    if (slice != null && slice.isItem()) {
      taken[count++] = slice.item;
    } else if (slice != null) {
      empty(slice.near);
      empty(slice.far);
    }
    return null;
  }

  private Slice thin(Slice slice, int share) {
    if (slice.isItem()) {
      return random.nextInt(ALL) < share ? empty(slice) : slice;
    }
    return joined(slice, thin(slice.near, share), thin(slice.far, share));
  }

  private Slice without(Slice slice) {
    if (slice.isItem() || random.nextInt(WHOLE) == 0) {
      return empty(slice);
    }
    return random.nextBoolean()
        ? joined(slice, without(slice.near), slice.far)
        : joined(slice, slice.near, without(slice.far));
  }

  private static Slice joined(Slice before, Slice near, Slice far) {
    if (near == null || far == null) {
      return near == null ? far : near;
    }
    boolean same = near == before.near && far == before.far;
    return same ? before : new Slice(near, far, before.across);
  }
}
