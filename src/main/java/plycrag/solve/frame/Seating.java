package plycrag.solve.frame;

import java.util.Arrays;
import java.util.List;

/** Which row of the matrices each freedom has, so that factors fill little. */
final class Seating {
  private final int[] seats;

  private Seating(int[] seats) {
    this.seats = seats;
  }

  /** For the elements of a frame with freedoms so numbered. */
  static Seating of(FreedomCount count, List<Element> elements) {
    int[] blockOf = count.blockOf();
    int[] sizes = new int[count.blocks()];
    Arrays.stream(blockOf).forEach(block -> sizes[block]++);
    int[] order =
        MinimumDegree.order(
            sizes,
            elements.stream()
                .map(one -> Arrays.stream(one.freedoms()).map(i -> blockOf[i]).distinct().toArray())
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
