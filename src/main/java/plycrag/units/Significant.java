package plycrag.units;

/** Numbers to three significant figures, as a reckoning that is redone by hand has them. */
public final class Significant {
  private static final double FIGURES = 100;
  private static final int MOST_DECIMALS = 6;

  private Significant() {}

  /** How many decimals show three figures of a number; none of one above a hundred. */
  public static int decimals(double value) {
    double size = Math.abs(value);
    int places = 0;
    while (size > 0 && size < FIGURES && places < MOST_DECIMALS) {
      size *= 10;
      places++;
    }
    return places;
  }

  /** The number. */
  public static String of(double value) {
    return Decimal.of(value, decimals(value));
  }
}
