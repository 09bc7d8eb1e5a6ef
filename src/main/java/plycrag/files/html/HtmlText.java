package plycrag.files.html;

import java.util.Locale;

/** Text inside a page. */
public final class HtmlText {
  private static final int REPLACEMENT = 0xFFFD;

  private HtmlText() {}

  /** The text with every character escaped that means something to a browser. */
  public static String of(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> append(escaped, c));
    return escaped.toString();
  }

  private static void append(StringBuilder escaped, int c) {
    switch (c) {
      case '&' -> escaped.append("&amp;");
      case '<' -> escaped.append("&lt;");
      case '>' -> escaped.append("&gt;");
      case '"' -> escaped.append("&quot;");
      case '\'' -> escaped.append("&#39;");
      case '\n', '\t' -> escaped.appendCodePoint(c);
      default -> escaped.appendCodePoint(allowed(c) ? c : REPLACEMENT);
    }
  }

  /** Whether the character is no control, lone surrogate or noncharacter. */
  private static boolean allowed(int c) {
    boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return !noncharacter
        && !Character.isISOControl(c)
        && Character.getType(c) != Character.SURROGATE;
  }

  /** Fills a template; numbers as digits of ASCII whatever the locale. */
  public static String fill(String template, Object... values) {
    return String.format(Locale.ROOT, template, values);
  }
}
