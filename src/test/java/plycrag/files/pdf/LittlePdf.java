package plycrag.files.pdf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a PDF whose streams are plain as text, by patterns and not by a library: what a person who
 * opens the file in an editor would find.
 *
 * @param text the file, a byte a character
 */
public record LittlePdf(String text) {
  private static final Pattern BOX =
      Pattern.compile("/(Media|Crop|Trim)Box \\[0 0 ([0-9.]+) ([0-9.]+)\\]");
  private static final Pattern CONTENT =
      Pattern.compile("stream\r?\n(2\\.8346456693 .*?)endstream", Pattern.DOTALL);
  private static final Pattern CIRCLE =
      Pattern.compile("(?m)^(\\S+) (\\S+) m (?:\\S+ ){4}(\\S+) (\\S+) c (?:\\S+ ){4}(\\S+) \\S+ c");

  /** A box of a page, points. */
  public record Box(String name, double width, double height) {}

  /** A circle on a page, mm from the page's lower left corner. */
  public record Circle(double x, double y, double radius) {}

  /** The file of those bytes. */
  public static LittlePdf of(byte[] bytes) {
    return new LittlePdf(new String(bytes, StandardCharsets.ISO_8859_1));
  }

  /** All boxes of all pages. */
  public List<Box> boxes() {
    return matches(BOX, text).stream()
        .map(
            box ->
                new Box(
                    box.group(1),
                    Double.parseDouble(box.group(2)),
                    Double.parseDouble(box.group(3))))
        .toList();
  }

  /** What the pages paint, page by page. */
  public List<String> contents() {
    return matches(CONTENT, text).stream().map(content -> content.group(1)).toList();
  }

  /** The circles of a page. */
  public static List<Circle> circles(String content) {
    return matches(CIRCLE, content).stream().map(LittlePdf::circle).toList();
  }

  /** From its right over its top to its left. */
  private static Circle circle(MatchResult found) {
    double right = Double.parseDouble(found.group(1));
    double left = Double.parseDouble(found.group(5));
    double middle = Double.parseDouble(found.group(2));
    return new Circle((left + right) / 2, middle, (right - left) / 2);
  }

  private static List<MatchResult> matches(Pattern pattern, String text) {
    List<MatchResult> all = new ArrayList<>();
    for (Matcher matcher = pattern.matcher(text); matcher.find(); ) {
      all.add(matcher.toMatchResult());
    }
    return all;
  }
}
