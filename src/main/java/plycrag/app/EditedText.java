package plycrag.app;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A parameter file's text with other values in it; all else stays as it is, so that findings name
 * the same lines.
 *
 * @param text of the file
 */
record EditedText(String text) {
  private static final Pattern HEADER = Pattern.compile("\\s*\\[.*");

  /** The same with a value for a key, in place of the one that stands there on one line. */
  EditedText with(Vary vary, String value) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    int header = header(lines, vary);
    if (header < 0) {
      lines.add("[" + vary.table() + "]");
      lines.add(vary.key() + " = " + value);
      return new EditedText(String.join("\n", lines) + "\n");
    }
    Pattern entry = Pattern.compile("\\s*" + vary.key() + "\\s*=.*");
    for (int at = header + 1; at < lines.size() && !isHeader(lines.get(at)); at++) {
      if (entry.matcher(lines.get(at)).matches()) {
        lines.set(at, vary.key() + " = " + value);
        return new EditedText(String.join("\n", lines) + "\n");
      }
    }
    lines.set(header, lines.get(header) + "\n" + vary.key() + " = " + value);
    return new EditedText(String.join("\n", lines) + "\n");
  }

  private static int header(List<String> lines, Vary vary) {
    Pattern header = Pattern.compile("\\s*\\[\\[?\\s*" + vary.table() + "\\s*]]?\\s*(#.*)?");
    int seen = 0;
    for (int at = 0; at < lines.size(); at++) {
      if (header.matcher(lines.get(at)).matches() && ++seen == vary.number()) {
        return at;
      }
    }
    return -1;
  }

  private static boolean isHeader(String line) {
    return HEADER.matcher(line).matches();
  }
}
