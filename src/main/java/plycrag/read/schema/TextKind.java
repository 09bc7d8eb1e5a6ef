package plycrag.read.schema;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import plycrag.read.text.Context;
import plycrag.read.text.Located;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/** A text. */
public final class TextKind implements Kind<String> {
  private static final int LONGEST_LINE = 60;
  private static final String LINE_WORDS =
      "one printable line of 1 to " + LONGEST_LINE + " characters";
  private static final int LONGEST_PATH = 200;
  private static final Pattern FILE =
      Pattern.compile("(?![A-Za-z]:)[^/\\\\]+(?:/[^/\\\\]+)*\\.csv");
  private static final Pattern MARK =
      Pattern.compile("[A-Za-z](?:[A-Za-z0-9 _-]{0,22}[A-Za-z0-9_-])?");

  /** No control characters and nothing that turns the line; something that is not a space. */
  private static final ValueShape LINE_SHAPE =
      new ValueShape.Line(
          "(?=.*\\S)[^\\u0000-\\u001f\\u007f-\\u009f\\u200e\\u200f\\u2028-\\u202e\\u2066-\\u2069]*",
          LONGEST_LINE);

  /** One printable line in any language. */
  public static final TextKind LINE =
      new TextKind(TextKind::isLine, LINE_SHAPE, "a name", LINE_WORDS);

  /** The same where it describes a thing. */
  public static final TextKind DESCRIPTION =
      new TextKind(TextKind::isLine, LINE_SHAPE, "a description", LINE_WORDS);

  /** A name that may stand before every mark, in every kind of file. */
  public static final TextKind NAME =
      new TextKind(
          MARK.asMatchPredicate(),
          new ValueShape.Line(MARK.pattern(), 24),
          "a name",
          "a letter of A to Z, then letters, digits, spaces, _ or -, at most 24 in all");

  /** The path of a CSV file from the folder of the parameter file. */
  public static final TextKind CSV_FILE =
      new TextKind(
          text ->
              text.length() <= LONGEST_PATH
                  && Printable.isOneLine(text)
                  && FILE.matcher(text).matches(),
          new ValueShape.Line(FILE.pattern(), LONGEST_PATH),
          "the path of a list",
          "a path from this file's folder with / between, that ends in .csv");

  private final Predicate<String> fits;
  private final ValueShape shape;
  private final String use;
  private final String words;

  /**
   * Texts of one sort.
   *
   * @param fits which texts are allowed
   * @param shape the same, as far as an expression can tell
   * @param use what the text serves as, for a person
   * @param words which texts are allowed, for a person
   */
  public TextKind(Predicate<String> fits, ValueShape shape, String use, String words) {
    this.fits = fits;
    this.shape = shape;
    this.use = use;
    this.words = words;
  }

  @Override
  public Optional<String> read(Located value, Context context) {
    if (!(value.value() instanceof String text)) {
      return refuseKind(value, context);
    }
    return fits.test(text)
        ? Optional.of(text)
        : context.refuse(
            value, Printable.quoted(text) + " cannot serve as " + use, mayStand(context));
  }

  @Override
  public ValueShape shape() {
    return shape;
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return words;
  }

  private static boolean isLine(String text) {
    return !text.isBlank()
        && text.codePointCount(0, text.length()) <= LONGEST_LINE
        && Printable.isOneLine(text);
  }
}
