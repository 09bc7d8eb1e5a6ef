package plycrag.files.csv;

import java.util.ArrayList;
import java.util.List;

/** Reads CSV by the grammar of RFC 4180, section 2, with a line feed for a line break. */
final class LittleCsv {
  private final String text;
  private int at;

  private LittleCsv(String text) {
    this.text = text;
  }

  static List<List<String>> read(String text) {
    return new LittleCsv(text).records();
  }

  private List<List<String>> records() {
    List<List<String>> records = new ArrayList<>();
    while (at < text.length()) {
      records.add(fields());
    }
    return records;
  }

  private List<String> fields() {
    List<String> fields = new ArrayList<>();
    do {
      fields.add(text.charAt(at) == '"' ? quoted() : bare());
    } while (text.charAt(at++) == ',');
    if (text.charAt(at - 1) != '\n') {
      throw new IllegalArgumentException("no end of record at " + at);
    }
    return fields;
  }

  private String bare() {
    int start = at;
    while (",\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return text.substring(start, at);
  }

  private String quoted() {
    StringBuilder field = new StringBuilder();
    at++;
    while (text.charAt(at) != '"' || text.startsWith("\"\"", at)) {
      at += text.charAt(at) == '"' ? 1 : 0;
      field.append(text.charAt(at++));
    }
    at++;
    return field.toString();
  }
}
