package plycrag.catalog;

/**
 * Compares what is asked for with what is sold, whose sizes stand in tables to a tenth of a
 * millimetre or as inches turned into millimetres.
 */
public final class SoldSize {
  /** Sizes closer than this are the same, mm: less than any two that are sold differ by. */
  private static final double APART = 0.05;

  private SoldSize() {}

  /** Whether two sizes are one in a shop, mm. */
  public static boolean same(double one, double other) {
    return Math.abs(one - other) <= APART;
  }

  /** Whether a size is another or greater, mm. */
  static boolean atLeast(double size, double least) {
    return size >= least - APART;
  }
}
