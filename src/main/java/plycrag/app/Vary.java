package plycrag.app;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key of a parameter file with the values that are tried.
 *
 * @param table its table
 * @param number which of its tables, from 1
 * @param key within the table
 * @param values in their order, as they are written in the file
 */
record Vary(String table, int number, String key, List<String> values) {
  /** How it is written. */
  static final String FORM = "key=from:to:step, such as facet.angle=20:40:5 or facet[2].length=...";

  private static final int MOST = 1000;
  private static final String NUMBER = "(-?[0-9]+(?:\\.[0-9]+)?)";
  private static final Pattern TEXT =
      Pattern.compile(
          "([a-z-]+)(?:\\[([1-9][0-9]?)])?\\.([a-z-]+)=" + NUMBER + ":" + NUMBER + ":" + NUMBER);

  /** Copies the values. */
  Vary {
    values = List.copyOf(values);
  }

  /**
   * Reads what a user wrote.
   *
   * @throws IllegalArgumentException if it is nothing of the kind, with a sentence for them
   */
  static Vary of(String text) {
    Matcher parts = TEXT.matcher(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException(text + " is not " + FORM);
    }
    BigDecimal from = new BigDecimal(parts.group(4));
    BigDecimal to = new BigDecimal(parts.group(5));
    BigDecimal step = new BigDecimal(parts.group(6));
    if (step.signum() <= 0 || to.compareTo(from) < 0) {
      throw new IllegalArgumentException(
          text + ": the last value is at least the first, and a step is above 0");
    }
    List<String> values = new ArrayList<>();
    for (BigDecimal value = from; value.compareTo(to) <= 0; value = value.add(step)) {
      values.add(value.toPlainString());
      if (values.size() > MOST) {
        throw new IllegalArgumentException(text + ": more than " + MOST + " values");
      }
    }
    int number = parts.group(2) == null ? 1 : Integer.parseInt(parts.group(2));
    return new Vary(parts.group(1), number, parts.group(3), values);
  }

  /** What it is called in a table of variants. */
  String name() {
    return table + (number > 1 ? "[" + number + "]" : "") + "." + key;
  }
}
