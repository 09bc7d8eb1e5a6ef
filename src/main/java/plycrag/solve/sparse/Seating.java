package plycrag.solve.sparse;

import java.util.Arrays;
import java.util.List;

/** Which row of the matrices each unknown has, so that factors fill little. */
public final class Seating {
  private final int[] seats;

  private Seating(int[] seats) {
    this.seats = seats;
  }

  /**
   * For unknowns that stay together in blocks.
   *
   * @param blockOf the number of each unknown's block, from 0
   * @param blocks how many there are
   * @param together unknowns of which each meets each: those of every element
   */
  public static Seating of(int[] blockOf, int blocks, List<int[]> together) {
    int[] sizes = new int[blocks];
    Arrays.stream(blockOf).forEach(block -> sizes[block]++);
    int[] order =
        MinimumDegree.order(
            sizes,
            together.stream()
                .map(one -> Arrays.stream(one).map(i -> blockOf[i]).distinct().toArray())
                .toList());
    return new Seating(seats(blockOf, sizes, order));
  }

  private static int[] seats(int[] blockOf, int[] sizes, int[] order) {
    int[] next = new int[sizes.length];
    int seat = 0;
    for (int block : order) {
      next[block] = seat;
      seat += sizes[block];
    }
    return Arrays.stream(blockOf).map(block -> next[block]++).toArray();
  }

  int size() {
    return seats.length;
  }

  int seat(int freedom) {
    return seats[freedom];
  }

  /** Values by freedom, by seat. */
  double[] seated(double[] values) {
    double[] seated = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      seated[seats[i]] = values[i];
    }
    return seated;
  }

  /** Values by seat, by freedom. */
  double[] risen(double[] values) {
    double[] risen = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      risen[i] = values[seats[i]];
    }
    return risen;
  }
}
