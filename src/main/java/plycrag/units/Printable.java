package plycrag.units;

/** Which characters may be printed, and how foreign text is shown within a sentence. */
public final class Printable {
  private static final int LONGEST = 40;

  private Printable() {}

  /**
   * Whether every character can be seen or is a plain space: no control characters, no line breaks,
   * nothing that turns the direction of reading, no halves of characters.
   */
  public static boolean isOneLine(String text) {
    return text.codePoints().allMatch(Printable::isPrintable);
  }

  /** The text shortened to 40 characters, the unprintable ones as {@code ?}. */
  public static String masked(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .limit(LONGEST)
        .map(point -> isPrintable(point) ? point : '?')
        .forEach(shown::appendCodePoint);
    return text.codePointCount(0, text.length()) > LONGEST ? shown + "…" : shown.toString();
  }

  /** The same between quotation marks. */
  public static String quoted(String text) {
    return '"' + masked(text) + '"';
  }

  private static boolean isPrintable(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }
}
