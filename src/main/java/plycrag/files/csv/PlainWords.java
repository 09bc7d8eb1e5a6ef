package plycrag.files.csv;

/**
 * Keeps words from being run by a spreadsheet.
 *
 * @see <a href="https://owasp.org/www-community/attacks/CSV_Injection">OWASP, CSV injection</a>
 */
final class PlainWords {
  private static final String TRIGGERS = "=+-@＝＋－＠";

  private PlainWords() {}

  /** The words, behind an apostrophe where a spreadsheet would read a formula. */
  static String of(String words) {
    return runs(words) ? "'" + words : words;
  }

  private static boolean runs(String words) {
    if (words.isEmpty()) {
      return false;
    }
    int first = words.chars().filter(c -> !unseen(c)).findFirst().orElse(' ');
    return Character.isISOControl(words.charAt(0)) || TRIGGERS.indexOf(first) >= 0;
  }

  /** Whether a spreadsheet may trim the character before it looks for a formula. */
  private static boolean unseen(int c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || Character.isISOControl(c)
        || Character.getType(c) == Character.FORMAT;
  }
}
