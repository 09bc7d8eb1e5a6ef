package plycrag.stock.cutting;

import java.math.BigInteger;

/**
 * The least weight that is needed for a remainder, from any values of the pieces: exact, however
 * the values were found.
 *
 * <p>Let V be the most that a bin of weight w can hold in value. If values are scaled by θ = min
 * w/V over the unlimited bins, then no such bin holds more than its weight, so θ times the value of
 * all pieces must be paid; a limited bin may hold more, by θV − w at most, as often as there are
 * such bins (Farley 1990; weak duality).
 */
final class DualBound {
  private DualBound() {}

  static long of(Packing packing, Remainder rest, long[] values, Knapsack knapsack) {
    BigInteger scale = BigInteger.ZERO;
    BigInteger divisor = BigInteger.ONE;
    boolean found = false;
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      Packing.Bin kind = packing.bins().get(bin);
      BigInteger held = BigInteger.valueOf(knapsack.value(kind.capacity()));
      BigInteger weight = BigInteger.valueOf(kind.weight());
      if (packing.isUnlimited(bin)
          && held.signum() > 0
          && (!found || weight.multiply(divisor).compareTo(scale.multiply(held)) < 0)) {
        scale = weight;
        divisor = held;
        found = true;
      }
    }
    BigInteger sum = scale.multiply(BigInteger.valueOf(value(rest, values)));
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      if (!packing.isUnlimited(bin)) {
        sum = sum.subtract(excess(packing, rest, knapsack, bin, scale, divisor));
      }
    }
    return roundedUp(sum, divisor);
  }

  private static BigInteger excess(
      Packing packing,
      Remainder rest,
      Knapsack knapsack,
      int bin,
      BigInteger scale,
      BigInteger divisor) {
    Packing.Bin kind = packing.bins().get(bin);
    BigInteger held = scale.multiply(BigInteger.valueOf(knapsack.value(kind.capacity())));
    BigInteger over = held.subtract(divisor.multiply(BigInteger.valueOf(kind.weight())));
    return over.max(BigInteger.ZERO).multiply(BigInteger.valueOf(rest.left()[bin]));
  }

  private static long value(Remainder rest, long[] values) {
    long sum = 0;
    for (int kind = 0; kind < values.length; kind++) {
      sum += rest.demands()[kind] * Math.max(0, values[kind]);
    }
    return sum;
  }

  private static long roundedUp(BigInteger sum, BigInteger divisor) {
    BigInteger[] parts = sum.max(BigInteger.ZERO).divideAndRemainder(divisor);
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }
}
