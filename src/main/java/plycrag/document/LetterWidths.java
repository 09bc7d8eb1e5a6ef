package plycrag.document;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The advance width of every letter that Liberation Sans has, from the table beside this class; the
 * table names its source and what makes it.
 *
 * @param widths by letter, units of the font
 */
record LetterWidths(Map<Integer, Integer> widths) {
  /** Units of an em: unitsPerEm in the font's head table. */
  static final double EM = 2048;

  /** Of the table. */
  static final String FILE = "liberation-sans.txt";

  /** How a line begins that is no row. */
  static final String REMARK = "#";

  /** What stands in a row for a letter that the font has not. */
  static final String NONE = ".";

  /** How many letters a row has. */
  static final int ROW = 16;

  LetterWidths {
    widths = Collections.unmodifiableMap(widths);
  }

  /** The font's. */
  static LetterWidths ofFont() {
    try (BufferedReader table =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(LetterWidths.class.getResourceAsStream(FILE)),
                StandardCharsets.UTF_8))) {
      return of(table.lines().toList());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static LetterWidths of(List<String> table) {
    Map<Integer, Integer> widths = new HashMap<>();
    for (String row : table) {
      if (!row.startsWith(REMARK)) {
        add(row, widths);
      }
    }
    return new LetterWidths(widths);
  }

  /** A row: the first letter's code, hexadecimal, then the widths of it and of those after it. */
  private static void add(String row, Map<Integer, Integer> widths) {
    String[] words = row.split(" +", -1);
    if (words.length != ROW + 1) {
      throw new IllegalStateException(FILE + ": " + row);
    }
    int first = Integer.parseInt(words[0], 16);
    for (int at = 0; at < ROW; at++) {
      String width = words[at + 1];
      if (!width.equals(NONE)) {
        widths.put(first + at, Integer.parseInt(width));
      }
    }
  }

  /** Whether the font has a letter. */
  boolean has(int letter) {
    return widths.containsKey(letter);
  }

  /** How far a letter takes a line, in units of the font, which has it. */
  int units(int letter) {
    return widths.get(letter);
  }
}
