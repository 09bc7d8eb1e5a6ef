package plycrag.units;

import java.math.BigDecimal;

/**
 * What a person's text for a length comes to.
 *
 * <p>Taken are a number or a fraction and one of {@code mm cm m in ft} or the marks {@code '} and
 * {@code "}, and feet followed by inches: {@code 2.4 m}, {@code 18mm}, {@code 3/4 in}, {@code 2 1/2
 * in}, {@code 8 ft 2 1/2 in}, {@code 8' 2 1/2"}. A minus may stand before all of it. The number of
 * millimetres is the {@code double} nearest to what was written, since it is worked out in decimal.
 */
public sealed interface LengthText {

  /**
   * A length.
   *
   * @param millimetres finite, of either sign
   */
  record Value(double millimetres) implements LengthText {}

  /**
   * No length.
   *
   * @param wrong what is wrong with the text, for a person
   * @param allowed what would be right, for a person
   */
  record Fault(String wrong, String allowed) implements LengthText {}

  /** Reads a text; every text gives a value or a fault. */
  static LengthText parse(String text) {
    return LengthParser.parse(text);
  }

  /**
   * What such a text matches from end to end, as ECMA-262 and Java both read it, spaces around it
   * and a minus left out.
   */
  static String expression() {
    return LengthParser.EXPRESSION;
  }

  /**
   * A bare number in millimetres, the {@code double} nearest to the number's shortest decimal.
   *
   * @param number any finite number
   * @param unit what the number counts
   */
  static double millimetres(double number, LengthUnit unit) {
    return BigDecimal.valueOf(number)
        .multiply(BigDecimal.valueOf(unit.millimetres()))
        .doubleValue();
  }
}
