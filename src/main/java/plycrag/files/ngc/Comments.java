package plycrag.files.ngc;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Remarks as comments that every controller skips. */
final class Comments {
  /** What parentheses, or a semicolon, and a dash may take of a line. */
  static final int FRAME = 4;

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  /** Hyphens, dashes and the minus sign, since a number must not lose its sign. */
  private static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2015\\u2212]");

  private static final Pattern OTHER = Pattern.compile("[^A-Z0-9._/:-]+");

  /**
   * Comments that are commands without a comma: LOGCLOSE, PROBEOPEN, PROBECLOSE (LinuxCNC manual,
   * G-code overview, "Comments").
   */
  private static final Pattern ACTIVE = Pattern.compile("(LOG|PROBE).*");

  private Comments() {}

  /**
   * A remark as what comments may hold, line by line; none if nothing of it can be written.
   *
   * @param longest most characters of one, a dash before it not counted
   */
  static List<String> of(String remark, int longest) {
    return wrapped(plain(remark), longest).stream().map(Comments::disarmed).toList();
  }

  private static String plain(String remark) {
    String folded = Normalizer.normalize(remark.replace('×', 'x'), Normalizer.Form.NFD);
    String letters = ACCENTS.matcher(folded).replaceAll("").toUpperCase(Locale.ROOT);
    String dashes = DASHES.matcher(letters).replaceAll("-");
    return OTHER.matcher(dashes).replaceAll(" ").strip();
  }

  private static List<String> wrapped(String text, int longest) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > longest) {
      int space = rest.lastIndexOf(' ', longest);
      int end = space < 0 ? longest : space;
      lines.add(rest.substring(0, end));
      rest = rest.substring(end).strip();
    }
    if (!rest.isEmpty()) {
      lines.add(rest);
    }
    return lines;
  }

  private static String disarmed(String line) {
    return ACTIVE.matcher(line).matches() ? "- " + line : line;
  }
}
