package plycrag.solve.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * The task as it is searched: every piece has its kerf added and so has every bin, so that kerfs
 * vanish; sizes fall strictly; sizes and weights are divided by what they have in common.
 */
final class Packing {
  private final int[] sizes;
  private final int[] demands;
  private final List<Bin> bins;
  private final long unit;

  Packing(int[] sizes, int[] demands, List<Bin> bins, long unit) {
    this.sizes = sizes;
    this.demands = demands;
    this.bins = bins;
    this.unit = unit;
  }

  /** Falling. */
  int[] sizes() {
    return sizes;
  }

  /** Of each size. */
  int[] demands() {
    return demands;
  }

  /** What they go into, at least one of them unlimited and long enough for every piece. */
  List<Bin> bins() {
    return bins;
  }

  /** The weight of an ordinary bin, neither at hand nor a last resort; linear programs use it. */
  long unit() {
    return unit;
  }

  /**
   * Equal bins.
   *
   * @param capacity how long
   * @param weight what is to be as little as possible in sum
   * @param limit how many
   */
  record Bin(int capacity, long weight, int limit) {}

  int kinds() {
    return sizes.length;
  }

  int count() {
    return Arrays.stream(demands).sum();
  }

  int greatestCapacity() {
    return bins.stream().mapToInt(Bin::capacity).max().orElseThrow();
  }

  /** No weight is larger, the last resort's included. */
  long greatestWeight() {
    return bins.stream().mapToLong(Bin::weight).max().orElseThrow();
  }

  /** Whether more are there than can be wanted. */
  boolean isUnlimited(int bin) {
    return bins.get(bin).limit() >= count();
  }
}
