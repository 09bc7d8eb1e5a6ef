package plycrag.read.text;

import java.util.List;
import java.util.regex.Pattern;
import plycrag.units.Printable;

/**
 * Friendly words for a value that is no TOML.
 *
 * @param value what the value looks like
 * @param wrong what is wrong, said after the value
 * @param allowed what would be right
 */
public record Explanation(Pattern value, String wrong, String allowed) {
  private static final List<Explanation> ALL =
      List.of(
          of("", " is missing", "a number, true, false, a list or a text in quotes is allowed"),
          of("[+-]?\\d+,\\d.*", " has a decimal comma", "a decimal point is allowed, as in 2.4"),
          of("[^\"'#]*//.*", " is followed by //", "a remark that begins with # is allowed"),
          of("[+-]?(\\.\\d.*|\\d+\\.(\\D.*)?)", " lacks a digit", "0.5 or 5.0 is allowed"),
          of("[+-]?0\\d+.*", " begins with a zero", "a number without it is allowed"),
          of(
              "[+-]?\\d+(\\.\\d+)?\\s*(mm|cm|m|in|ft|'|\"|/|-|\\s).*",
              " has a unit or a fraction and no quotes",
              "a text in quotes is allowed, as in \"2.4 m\" or \"3/4 in\""),
          of("[“”„‘’«»].*", " has printers' quotes", "straight quotes are allowed, as in \"main\""),
          of(
              "(?i)(yes|no|on|off|true|false)\\b.*",
              " is not a word of TOML",
              "true or false is allowed, in small letters"),
          of(
              "(\"\"\"|''').*",
              " is not a text on one line that TOML can read",
              "a text on one line between quotes is allowed"),
          of(
              "\"[^\"\\\\]*\"\\s*[^#\\s].*|'[^']*'\\s*[^#\\s].*",
              " goes on after its closing quote",
              "one value is allowed"),
          of("\"[^\"]*\\\\.*", " has a backslash", "\\\\ is allowed in its place"),
          of("[\"'].*", " has no closing quote", "a text between two quotes is allowed"),
          of(
              "\\{.*=\\s*[+-]?\\d+,\\d.*",
              " has a decimal comma",
              "a decimal point is allowed, as in 2.4"),
          of(
              "\\{.*",
              " is not a table that TOML can read",
              "entries with commas between and a } at the end are allowed"),
          of(
              "\\[.*",
              " is not a list that TOML can read",
              "numbers or texts in quotes, with commas between and a ] at the end, are allowed"),
          of("[\\p{L}].*", " has no quotes", "a text in quotes is allowed, as in \"main\""),
          of(
              "\\d[\\w.]*[\\p{L}].*",
              " has no quotes",
              "a number, or a text in quotes, is allowed"));

  private static final Explanation OTHER =
      of(
          "(?s).*",
          " is not a value of TOML",
          "a number, true, false, a list or a text in quotes is allowed");

  /** The first that fits a value. */
  public static Explanation of(String value) {
    return ALL.stream()
        .filter(each -> each.value().matcher(value).matches())
        .findFirst()
        .orElse(OTHER);
  }

  /** What is wrong with a value. */
  public String wrongWith(String text) {
    return (text.isEmpty() ? "the value" : Printable.quoted(text)) + wrong;
  }

  private static Explanation of(String pattern, String wrong, String allowed) {
    return new Explanation(Pattern.compile(pattern), wrong, allowed);
  }
}
