package plycrag.params;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import plycrag.units.LengthUnit;
import plycrag.units.Printable;

/**
 * A text.
 *
 * @param fits which texts are allowed
 * @param words the same for a person
 */
record TextKind(Predicate<String> fits, String words) implements Kind<String> {
  private static final int LONGEST_LINE = 60;
  private static final Pattern MARK =
      Pattern.compile("[A-Za-z](?:[A-Za-z0-9 _-]{0,22}[A-Za-z0-9_-])?");

  /** One printable line in any language. */
  static final TextKind LINE =
      new TextKind(
          text ->
              !text.isBlank()
                  && text.codePointCount(0, text.length()) <= LONGEST_LINE
                  && Printable.isOneLine(text),
          "one printable line of 1 to " + LONGEST_LINE + " characters");

  /** A name that may stand before every mark, in every kind of file. */
  static final TextKind NAME =
      new TextKind(
          MARK.asMatchPredicate(),
          "a letter of A to Z, then letters, digits, spaces, _ or -, at most 24 in all");

  @Override
  public Optional<String> read(Located value, Context context) {
    if (!(value.value() instanceof String text)) {
      return refuseKind(value, context);
    }
    return fits.test(text)
        ? Optional.of(text)
        : context.refuse(
            value, Printable.quoted(text) + " cannot serve as a name", mayStand(context));
  }

  @Override
  public String allowed(List<LengthUnit> units) {
    return words;
  }
}
