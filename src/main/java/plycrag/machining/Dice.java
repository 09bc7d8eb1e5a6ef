package plycrag.machining;

/**
 * Numbers as if thrown, always the same ones: SplitMix64, of G. L. Steele, D. Lea and C. H. Flood,
 * "Fast splittable pseudorandom number generators", 2014.
 */
final class Dice {
  private static final long STEP = 0x9E3779B97F4A7C15L;

  private long state;

  Dice(long seed) {
    state = seed;
  }

  /** The generator's next 64 bits. */
  long next() {
    state += STEP;
    long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }

  /** A number from 0 to below a bound. */
  int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }
}
