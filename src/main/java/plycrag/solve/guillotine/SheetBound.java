package plycrag.solve.guillotine;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A number of sheets that no plan comes below: the largest over pairs of dual feasible functions,
 * one for each axis, of the items' summed products; an item that may turn counts the lesser of its
 * two products. Sheets of several kinds count as one that is as large as any of them each way;
 * besides, the areas of the largest sheets there are must reach the items' area.
 */
final class SheetBound {
  /** The most products that are formed. */
  private static final int WORK = 30_000_000;

  private final GuillotineTask job;
  private final int size;
  private final List<DualFeasible> along;
  private final List<DualFeasible> up;

  private SheetBound(GuillotineTask job) {
    this.job = job;
    size = job.size();
    int[] lengths = lengths();
    int divisor = divisor(lengths);
    int[] reduced = Arrays.stream(lengths).map(length -> length / divisor).toArray();
    int[] items = Arrays.copyOf(reduced, 2 * size);
    int most = (int) Math.max(1, Math.sqrt((double) WORK / size));
    along = DualFeasible.family(items, reduced[2 * size], most);
    up = DualFeasible.family(swapped(items), reduced[2 * size + 1], most);
  }

  static int of(GuillotineTask job) {
    return Math.max(byArea(job), new SheetBound(job).byFunctions());
  }

  private static int byArea(GuillotineTask job) {
    long[] areas =
        IntStream.range(0, job.stock.size())
            .flatMap(kind -> IntStream.generate(() -> kind).limit(job.most(kind)))
            .mapToLong(job::sheetArea)
            .sorted()
            .toArray();
    long open = job.itemArea();
    int sheets = 0;
    while (open > 0 && sheets < areas.length) {
      sheets++;
      open -= areas[areas.length - sheets];
    }
    return sheets;
  }

  /** All items' widths, then their heights, then the widest and the highest sheet. */
  private int[] lengths() {
    int[] kinds = IntStream.range(0, job.stock.size()).toArray();
    int[] lengths = new int[2 * size + 2];
    for (int item = 0; item < size; item++) {
      lengths[item] = job.width(item, false);
      lengths[size + item] = job.height(item, false);
    }
    lengths[2 * size] = Arrays.stream(kinds).map(job::sheetWidth).max().orElseThrow();
    lengths[2 * size + 1] = Arrays.stream(kinds).map(job::sheetHeight).max().orElseThrow();
    return lengths;
  }

  private static int divisor(int[] lengths) {
    return Arrays.stream(lengths).reduce(0, SheetBound::divisor);
  }

  private static int divisor(int one, int other) {
    return other == 0 ? one : divisor(other, one % other);
  }

  private int[] swapped(int[] items) {
    int[] swapped = new int[2 * size];
    System.arraycopy(items, 0, swapped, size, size);
    System.arraycopy(items, size, swapped, 0, size);
    return swapped;
  }

  private int byFunctions() {
    long most = 0;
    for (DualFeasible width : along) {
      for (DualFeasible height : up) {
        most = Math.max(most, sheets(width, height));
      }
    }
    return Math.toIntExact(most);
  }

  private long sheets(DualFeasible width, DualFeasible height) {
    long sum = 0;
    for (int item = 0; item < size; item++) {
      long product = width.value(item) * height.value(item);
      if (job.mayTurn(item)) {
        product = Math.min(product, width.value(size + item) * height.value(size + item));
      }
      sum += product;
    }
    long capacity = width.capacity() * height.capacity();
    return (sum + capacity - 1) / capacity;
  }
}
