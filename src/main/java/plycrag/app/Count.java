package plycrag.app;

/** Counts things in words. */
final class Count {
  private Count() {}

  /** {@code 1 sheet}, {@code 2 sheets}. */
  static String of(int count, String thing) {
    return count + " " + thing + (count == 1 ? "" : "s");
  }
}
