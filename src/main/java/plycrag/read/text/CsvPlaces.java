package plycrag.read.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells where the fields of a CSV file begin, which the reader of its grammar does not. Goes
 * through the same text in step with it: record by record, comments and empty lines passed over.
 */
final class CsvPlaces {
  static final char COMMENT = '#';

  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  CsvPlaces(String text) {
    this.text = text;
    skipRemarks();
  }

  /** Where the next record begins. */
  SourcePlace next() {
    return new SourcePlace(line, 1 + text.codePointCount(lineStart, at));
  }

  /** Where the fields of the next record begin; goes on to the one after it. */
  List<SourcePlace> fields() {
    List<SourcePlace> places = new ArrayList<>();
    boolean more = true;
    while (more) {
      skipSpaces();
      places.add(next());
      skipField();
      more = is(',');
      at += more ? 1 : 0;
    }
    skipLine();
    skipRemarks();
    return places;
  }

  private void skipField() {
    if (is('"')) {
      step();
      while (at < text.length() && (!is('"') || text.startsWith("\"\"", at))) {
        at += is('"') ? 1 : 0;
        step();
      }
    }
    while (at < text.length() && !is(',') && !isLineEnd()) {
      step();
    }
  }

  private void skipRemarks() {
    while (at < text.length() && (isLineEnd() || is(COMMENT))) {
      skipLine();
    }
  }

  private void skipLine() {
    while (at < text.length() && !isLineEnd()) {
      step();
    }
    at += text.startsWith("\r\n", at) ? 1 : 0;
    step();
  }

  private void skipSpaces() {
    while (is(' ') || is('\t')) {
      step();
    }
  }

  private void step() {
    if (at < text.length()) {
      boolean ends = is('\n') || (is('\r') && !text.startsWith("\r\n", at));
      at++;
      line += ends ? 1 : 0;
      lineStart = ends ? at : lineStart;
    }
  }

  private boolean is(char character) {
    return at < text.length() && text.charAt(at) == character;
  }

  private boolean isLineEnd() {
    return is('\n') || is('\r');
  }
}
