package plycrag.finding;

import plycrag.units.Tape;

/**
 * A key with a value that mends something, so that whoever reads it can write it into the file.
 *
 * @param key after its table, as {@code [wall] raise}
 * @param value as a file has it
 */
public record Cure(String key, String value) {
  /** A length, with its unit where a bare number would not say it exactly; mm. */
  public static Cure length(String key, double millimetres, Tape tape) {
    return new Cure(
        key,
        switch (tape.unit()) {
          case MM -> tape.bareSize(millimetres);
          case IN -> '"' + tape.size(millimetres) + '"';
        });
  }

  /** One of the words that a key takes. */
  public static Cure word(String key, String word) {
    return new Cure(key, '"' + word + '"');
  }

  /** In brackets, behind the words that it belongs to: {@code ([wall] raise = 340)}. */
  public String words() {
    return "(" + key + " = " + value + ")";
  }
}
