package plycrag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;

/**
 * A packed R-tree that answers in the order in which its items were given, so that nothing that
 * depends on it depends on the tree. Items without a box are near to nothing.
 *
 * <p>Boxes lie in numbers alone, those of neighbours (by the order in Z of their middles) beside
 * each other; each further level has a box around every few of the one below.
 *
 * @param <T> what it holds
 */
public final class SpatialIndex<T> {
  /** How many boxes one of the next level holds. */
  private static final int CHILDREN = 8;

  /** Numbers of a box: its left, low, right and high side. */
  private static final int SIDES = 4;

  /** So many steps along either axis tell neighbours. */
  private static final int STEPS = 1 << 15;

  private static final int NUMBER_BITS = 31;

  private final List<T> items;

  /** Which item each box of the lowest level belongs to. */
  private final int[] numbers;

  /** The boxes, from those of the items to the one around all. */
  private final List<double[]> levels = new ArrayList<>();

  /** An index over items, each with its box. */
  public SpatialIndex(List<T> items, Function<T, Envelope> box) {
    this.items = List.copyOf(items);
    List<Envelope> boxes = this.items.stream().map(box).toList();
    this.numbers = inOrder(boxes);
    double[] level = new double[SIDES * numbers.length];
    for (int at = 0; at < numbers.length; at++) {
      Envelope one = boxes.get(numbers[at]);
      level[SIDES * at] = one.getMinX();
      level[SIDES * at + 1] = one.getMinY();
      level[SIDES * at + 2] = one.getMaxX();
      level[SIDES * at + 3] = one.getMaxY();
    }
    levels.add(level);
    while (level.length > SIDES) {
      level = around(level);
      levels.add(level);
    }
  }

  /** The numbers of the boxes that are any, in the order in Z of their middles. */
  private static int[] inOrder(List<Envelope> boxes) {
    Envelope all = new Envelope();
    boxes.forEach(all::expandToInclude);
    long[] keys = new long[boxes.size()];
    int count = 0;
    for (int number = 0; number < boxes.size(); number++) {
      Envelope box = boxes.get(number);
      if (!box.isNull()) {
        long across = step(box.getMinX() + box.getMaxX() - 2 * all.getMinX(), all.getWidth());
        long up = step(box.getMinY() + box.getMaxY() - 2 * all.getMinY(), all.getHeight());
        keys[count++] = (spread(across) | spread(up) << 1) << NUMBER_BITS | number;
      }
    }
    Arrays.sort(keys, 0, count);
    return Arrays.stream(keys, 0, count)
        .mapToInt(key -> (int) (key & ((1L << NUMBER_BITS) - 1)))
        .toArray();
  }

  private static long step(double twice, double size) {
    return size > 0 ? (long) (twice / 2 / size * (STEPS - 1)) : 0;
  }

  /** The bits of a number with room for those of another between them. */
  private static long spread(long number) {
    long bits = number;
    bits = (bits | bits << 8) & 0x00FF00FFL;
    bits = (bits | bits << 4) & 0x0F0F0F0FL;
    bits = (bits | bits << 2) & 0x33333333L;
    return (bits | bits << 1) & 0x55555555L;
  }

  /** The next level. */
  private static double[] around(double[] level) {
    int count = level.length / SIDES;
    double[] next = new double[SIDES * ((count + CHILDREN - 1) / CHILDREN)];
    for (int at = 0; at < count; at++) {
      int into = at / CHILDREN * SIDES;
      boolean isFirst = at % CHILDREN == 0;
      for (int side = 0; side < SIDES; side++) {
        double one = level[SIDES * at + side];
        double other = isFirst ? one : next[into + side];
        next[into + side] = side < 2 ? Math.min(one, other) : Math.max(one, other);
      }
    }
    return next;
  }

  /** The items whose boxes come within a reach of the box, mm. */
  public List<T> near(Envelope box, double reach) {
    Envelope wider = new Envelope(box);
    wider.expandBy(reach);
    Found found = new Found();
    if (!wider.isNull()) {
      int top = levels.size() - 1;
      find(top, 0, levels.get(top).length / SIDES, wider, found);
    }
    List<T> near = new ArrayList<>(found.count);
    for (int number : found.inOrder()) {
      near.add(items.get(number));
    }
    return near;
  }

  /** Looks through some boxes of a level and what lies below them. */
  private void find(int level, int from, int to, Envelope box, Found found) {
    double[] boxes = levels.get(level);
    for (int at = from; at < to; at++) {
      int side = SIDES * at;
      boolean met =
          boxes[side] <= box.getMaxX()
              && boxes[side + 1] <= box.getMaxY()
              && boxes[side + 2] >= box.getMinX()
              && boxes[side + 3] >= box.getMinY();
      if (met && level == 0) {
        found.add(numbers[at]);
      } else if (met) {
        int below = levels.get(level - 1).length / SIDES;
        find(level - 1, at * CHILDREN, Math.min((at + 1) * CHILDREN, below), box, found);
      }
    }
  }

  /** Numbers that are collected. */
  private static final class Found {
    private int[] numbers = new int[CHILDREN];
    private int count;

    void add(int number) {
      if (count == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * count);
      }
      numbers[count++] = number;
    }

    int[] inOrder() {
      Arrays.sort(numbers, 0, count);
      return Arrays.copyOf(numbers, count);
    }
  }
}
