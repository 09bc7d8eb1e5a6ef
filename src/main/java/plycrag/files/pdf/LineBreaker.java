package plycrag.files.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text into lines at its spaces, as many words on a line as go; a word that is wider than a
 * line is broken where the line ends.
 */
final class LineBreaker {
  private final PdfFont font;
  private final TextStyle style;

  /**
   * Breaks text of one style.
   *
   * @param font whose letters are measured
   * @param style how large the letters are
   */
  LineBreaker(PdfFont font, TextStyle style) {
    this.font = font;
    this.style = style;
  }

  /** The width of a line, mm. */
  double width(String text) {
    return font.width(text) * style.size();
  }

  /** The width of the widest word, mm. */
  double widestWord(String text) {
    return words(text).stream().mapToDouble(this::width).max().orElse(0);
  }

  /** The lines of a text in a column; none of a blank one. */
  List<String> lines(String text, double column) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(text)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer) <= column) {
        line = longer;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = lastOf(word, column, lines);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  /** Adds all lines that a word fills; what remains of it. */
  private String lastOf(String word, double column, List<String> lines) {
    String rest = word;
    while (width(rest) > column && rest.codePointCount(0, rest.length()) > 1) {
      int end = rest.length();
      do {
        end = rest.offsetByCodePoints(end, -1);
      } while (rest.codePointCount(0, end) > 1 && width(rest.substring(0, end)) > column);
      lines.add(rest.substring(0, end));
      rest = rest.substring(end);
    }
    return rest;
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
  }
}
