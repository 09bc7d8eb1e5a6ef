package plycrag.read.schema;

import plycrag.geometry.Tolerance;
import plycrag.units.Decimal;

/**
 * The numbers from a least to a greatest, both allowed.
 *
 * @param least the least
 * @param greatest the greatest
 */
public record Range(double least, double greatest) {
  private static final int DECIMALS = 3;
  private static final double SCALE = 1000;
  private static final double PRINTABLE = 1e9;

  public boolean holds(double number) {
    return least <= number && number <= greatest;
  }

  /** What is wrong with a number outside of the range. */
  String complaint(double number, double one, String unit) {
    String shown =
        Math.abs(number) < PRINTABLE
            ? Decimal.of(number / one, 4) + " " + unit + " is"
            : "the number is";
    return shown + (number < least ? " too small" : " too great");
  }

  /**
   * The range in words, rounded inwards so that what is shown is allowed.
   *
   * @param one how much one of the unit is
   * @param unit the unit's word
   */
  String words(double one, String unit) {
    String from = Decimal.of(Tolerance.wholeUp(least / one * SCALE) / SCALE, DECIMALS);
    String to = Decimal.of(Tolerance.wholeDown(greatest / one * SCALE) / SCALE, DECIMALS);
    return from + " to " + to + " " + unit;
  }
}
