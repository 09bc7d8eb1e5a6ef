package plycrag.units;

/** Counts things in words. */
public final class Count {
  private Count() {}

  /** {@code 1 sheet}, {@code 2 sheets}. */
  public static String of(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
