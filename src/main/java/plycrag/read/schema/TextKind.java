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

  /** One printable line in any language. */
  public static final TextKind LINE = new TextKind(TextKind::isLine, "a name", LINE_WORDS);

  /** The same where it describes a thing. */
  public static final TextKind DESCRIPTION =
      new TextKind(TextKind::isLine, "a description", LINE_WORDS);

  /** A name that may stand before every mark, in every kind of file. */
  public static final TextKind NAME =
      new TextKind(
          MARK.asMatchPredicate(),
          "a name",
          "a letter of A to Z, then letters, digits, spaces, _ or -, at most 24 in all");

  /** The path of a CSV file from the folder of the parameter file. */
  public static final TextKind CSV_FILE =
      new TextKind(
          text ->
              text.length() <= LONGEST_PATH
                  && Printable.isOneLine(text)
                  && FILE.matcher(text).matches(),
          "the path of a list",
          "a path from this file's folder with / between, that ends in .csv");

  private final Predicate<String> fits;
  private final String use;
  private final String words;

  /**
   * Texts of one sort.
   *
   * @param fits which texts are allowed
   * @param use what the text serves as, for a person
   * @param words which texts are allowed, for a person
   */
  public TextKind(Predicate<String> fits, String use, String words) {
    this.fits = fits;
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
  public String allowed(List<LengthUnit> units) {
    return words;
  }

  private static boolean isLine(String text) {
    return !text.isBlank()
        && text.codePointCount(0, text.length()) <= LONGEST_LINE
        && Printable.isOneLine(text);
  }
}
