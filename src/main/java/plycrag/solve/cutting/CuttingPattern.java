package plycrag.solve.cutting;

import java.util.Arrays;

/** What goes into one bin. */
final class CuttingPattern {
  private final int bin;
  private final int[] counts;

  CuttingPattern(int bin, int[] counts) {
    this.bin = bin;
    this.counts = counts;
  }

  /** Index of the bin's kind. */
  int bin() {
    return bin;
  }

  /** Of each size; never changed. */
  int[] counts() {
    return counts;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CuttingPattern pattern
        && bin == pattern.bin
        && Arrays.equals(counts, pattern.counts);
  }

  @Override
  public int hashCode() {
    return 31 * bin + Arrays.hashCode(counts);
  }

  @Override
  public String toString() {
    return bin + Arrays.toString(counts);
  }

  /** What it is worth at a value for each size. */
  long value(long[] values) {
    long sum = 0;
    for (int kind = 0; kind < counts.length; kind++) {
      sum += counts[kind] * values[kind];
    }
    return sum;
  }
}
