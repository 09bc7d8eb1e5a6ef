package plycrag.files.dxf;

import java.util.Locale;

/** Text as a TEXT entity holds it. */
final class DxfText {
  private DxfText() {}

  /**
   * Escapes what is not ASCII, and the backslash and caret that begin escapes, as {@code \U+XXXX};
   * two percent signs, which begin a control code, as two codes for a percent sign.
   */
  static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.replace("%%", "%%%%%%").chars().forEach(letter -> append(out, (char) letter));
    return out.toString();
  }

  private static void append(StringBuilder out, char letter) {
    if (letter < ' ' || letter > '~' || letter == '\\' || letter == '^') {
      out.append(String.format(Locale.ROOT, "\\U+%04X", (int) letter));
    } else {
      out.append(letter);
    }
  }
}
