package plycrag.solve.cutting;

import java.math.BigInteger;

/**
 * The least weight that is needed for a remainder, from any values of the pieces: exact, however
 * the values were found.
 *
 * <p>Let V be the most that a bin of weight w can hold in value. If values are scaled by θ ≤ w/V
 * for every unlimited bin, then no such bin holds more than its weight, so θ times the value of all
 * pieces must be paid; a limited bin may hold more, by θV − w at most, as often as there are such
 * bins (Farley 1990; weak duality). That bound is concave in θ and bends only where θ = w/V of some
 * bin, so the best of these is taken. Prices are whole parts of a unit of weight, rounded down.
 */
final class DualBound {
  private static final int BITS = 60;

  private final Packing packing;
  private final int shift;
  private final long[] prices;
  private final long[] excess;

  /**
   * Scales values.
   *
   * @param knapsack of these values, for the demands of the largest remainder asked for
   * @param rest for which the bound is to be good; it holds for every other too
   */
  DualBound(Packing packing, long[] values, Knapsack knapsack, Remainder rest) {
    this.packing = packing;
    long heaviest = Math.multiplyExact(packing.greatestWeight() + 1, (long) packing.count());
    this.shift = Math.max(0, BITS - (Long.SIZE - Long.numberOfLeadingZeros(heaviest)));
    this.prices = new long[values.length];
    this.excess = new long[packing.bins().size()];
    int tightest = tightest(knapsack);
    int best = tightest;
    scale(values, knapsack, tightest);
    long most = parts(rest);
    for (int bin = 0; bin < excess.length; bin++) {
      if (isTighter(bin, tightest, knapsack)) {
        scale(values, knapsack, bin);
        if (parts(rest) > most) {
          most = parts(rest);
          best = bin;
        }
      }
    }
    scale(values, knapsack, best);
  }

  /** Scales by what one bin weighs for the value it holds. */
  private void scale(long[] values, Knapsack knapsack, int by) {
    BigInteger held = BigInteger.valueOf(Math.max(1, held(knapsack, by)));
    BigInteger weight = BigInteger.valueOf(weight(by));
    for (int kind = 0; kind < values.length; kind++) {
      BigInteger value = BigInteger.valueOf(Math.max(0, values[kind]));
      prices[kind] = value.multiply(weight).divide(held).longValueExact();
    }
    for (int bin = 0; bin < excess.length; bin++) {
      BigInteger most = BigInteger.valueOf(held(knapsack, bin)).multiply(weight).divide(held);
      excess[bin] = packing.isUnlimited(bin) ? 0 : Math.max(0, most.longValueExact() - weight(bin));
    }
  }

  private int tightest(Knapsack knapsack) {
    int tightest = -1;
    for (int bin = 0; bin < packing.bins().size(); bin++) {
      if (packing.isUnlimited(bin) && (tightest < 0 || isTighter(bin, tightest, knapsack))) {
        tightest = bin;
      }
    }
    return tightest;
  }

  /** Whether a bin weighs less for the value it holds. */
  private boolean isTighter(int bin, int other, Knapsack knapsack) {
    return product(weight(bin), held(knapsack, other))
            .compareTo(product(weight(other), held(knapsack, bin)))
        < 0;
  }

  private static BigInteger product(long one, long other) {
    return BigInteger.valueOf(one).multiply(BigInteger.valueOf(other));
  }

  private long held(Knapsack knapsack, int bin) {
    return knapsack.value(packing.bins().get(bin).capacity());
  }

  /** The weight of a bin in parts. */
  long weight(int bin) {
    return packing.bins().get(bin).weight() << shift;
  }

  /** What a filled bin costs in parts, beyond the price of what it holds; not negative. */
  long reducedCost(CuttingPattern pattern) {
    return weight(pattern.bin()) + excess[pattern.bin()] - pattern.value(prices);
  }

  /** The price of a piece, in parts. */
  long price(int kind) {
    return prices[kind];
  }

  /** What a limited bin may hold beyond its weight, in parts. */
  long excess(int bin) {
    return excess[bin];
  }

  /** The least weight of a packing of the remainder. */
  long of(Remainder rest) {
    return Math.max(0, -Math.floorDiv(-parts(rest), 1L << shift));
  }

  /** How many parts a packing may weigh more than the bound and still not exceed a weight. */
  long slack(Remainder rest, long weight) {
    return (weight << shift) - parts(rest);
  }

  private long parts(Remainder rest) {
    long sum = 0;
    for (int kind = 0; kind < prices.length; kind++) {
      sum = Math.addExact(sum, Math.multiplyExact(prices[kind], rest.demands()[kind]));
    }
    for (int bin = 0; bin < excess.length; bin++) {
      sum = Math.subtractExact(sum, Math.multiplyExact(excess[bin], rest.left()[bin]));
    }
    return sum;
  }
}
