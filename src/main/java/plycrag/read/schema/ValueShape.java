package plycrag.read.schema;

import java.util.List;

/**
 * What a program that knows none of our kinds can tell of a value: what editors complete and check.
 * It refuses nothing that a kind takes, and lets pass what only a kind can judge.
 */
public sealed interface ValueShape {

  /**
   * A length, or a length per time: a number in the file's unit, or a text with a unit.
   *
   * @param range mm, or mm per that time
   * @param per what follows the unit in a text
   */
  record Length(Range range, String per) implements ValueShape {}

  /** A number, or a whole number, within a range. */
  record Bounded(Range range, boolean isWhole) implements ValueShape {}

  /** One of these words. */
  record Words(List<String> words) implements ValueShape {
    /** Copies the words. */
    public Words {
      words = List.copyOf(words);
    }
  }

  /**
   * A text.
   *
   * @param expression what it matches from end to end, as ECMA-262 and Java both read it
   * @param longest how many characters there may be
   */
  record Line(String expression, int longest) implements ValueShape {}

  /** Yes or no. */
  record Flag() implements ValueShape {}

  /** So many of a shape. */
  record Several(ValueShape each, int least, int most) implements ValueShape {}

  /** A list, or one of a few words for it. */
  record Named(Several list, Words names) implements ValueShape {}

  /** Whether lengths are in it, so that what is allowed depends on the file's unit. */
  default boolean hasLengths() {
    if (this instanceof Several several) {
      return several.each().hasLengths();
    }
    return this instanceof Length || (this instanceof Named named && named.list().hasLengths());
  }
}
