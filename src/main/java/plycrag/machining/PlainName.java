package plycrag.machining;

import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * A name from a parameter file as a program may hold it: ASCII letters, digits, space and {@code .
 * _ -} alone, cut to a length.
 */
final class PlainName {
  private static final int LONGEST = 40;
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^A-Za-z0-9 ._-]+");
  private static final Pattern SPACES = Pattern.compile(" +");

  private PlainName() {}

  /** Letters lose their accents, all else becomes a space; it may be left empty. */
  static String of(String name) {
    String folded = Normalizer.normalize(name, Normalizer.Form.NFD);
    String letters = OTHER.matcher(ACCENTS.matcher(folded).replaceAll("")).replaceAll(" ");
    String plain = SPACES.matcher(letters).replaceAll(" ").strip();
    return plain.length() > LONGEST ? plain.substring(0, LONGEST).strip() : plain;
  }
}
