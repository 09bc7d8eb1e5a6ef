package plycrag.solve.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is still to be packed after some bins are filled. Its arrays are never changed. */
final class Remainder {
  private final int[] demands;
  private final int[] left;
  private final long spent;
  private final List<Filled> filled;

  Remainder(int[] demands, int[] left, long spent, List<Filled> filled) {
    this.demands = demands;
    this.left = left;
    this.spent = spent;
    this.filled = filled;
  }

  /** Of each size. */
  int[] demands() {
    return demands;
  }

  /** Of each kind of bin. */
  int[] left() {
    return left;
  }

  /** Weight of the bins filled. */
  long spent() {
    return spent;
  }

  /** The bins filled, newest last. */
  List<Filled> filled() {
    return filled;
  }

  /** A pattern and how often it is used. */
  record Filled(CuttingPattern pattern, int times) {}

  static Remainder all(Packing packing) {
    int[] left = packing.bins().stream().mapToInt(Packing.Bin::limit).toArray();
    return new Remainder(packing.demands(), left, 0, List.of());
  }

  boolean isEmpty() {
    return Arrays.stream(demands).allMatch(demand -> demand == 0);
  }

  /** How often a pattern can be used without making more than is wanted. */
  int room(CuttingPattern pattern) {
    int times = left[pattern.bin()];
    boolean any = false;
    for (int kind = 0; kind < demands.length; kind++) {
      int each = pattern.counts()[kind];
      if (each > 0) {
        any = true;
        times = Math.min(times, demands[kind] / each);
      }
    }
    return any ? times : 0;
  }

  /** What remains after a pattern that there is room for. */
  Remainder after(Packing packing, CuttingPattern pattern, int times) {
    int[] fewer = demands.clone();
    for (int kind = 0; kind < fewer.length; kind++) {
      fewer[kind] -= times * pattern.counts()[kind];
    }
    int[] bins = left.clone();
    bins[pattern.bin()] -= times;
    List<Filled> more = new ArrayList<>(filled);
    more.add(new Filled(pattern, times));
    long weight = packing.bins().get(pattern.bin()).weight();
    return new Remainder(fewer, bins, spent + times * weight, more);
  }
}
