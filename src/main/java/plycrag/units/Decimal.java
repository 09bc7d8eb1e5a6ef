package plycrag.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The one number formatter for files: a decimal point, no exponent, no trailing zeros, no {@code
 * -0}.
 */
public final class Decimal {
  private static final long[] SCALES = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};
  private static final double LARGEST = 1e12;

  private Decimal() {}

  /**
   * Prints a number from its scaled integer, halves away from zero.
   *
   * @param value any finite number below 10¹² in size
   * @param decimals most digits after the point, 0 to 6; above 4 for lengths in metres only
   * @throws IllegalArgumentException if the number is not finite or too large; a defect of the
   *     caller, since no such number may reach a file
   */
  public static String of(double value, int decimals) {
    if (!(Math.abs(value) < LARGEST)) {
      throw new IllegalArgumentException("not a printable number: " + value);
    }
    long scale = SCALES[decimals];
    long scaled = Math.round(Math.abs(value) * scale);
    String sign = value < 0 && scaled != 0 ? "-" : "";
    return sign + scaled / scale + fraction(scaled % scale, decimals);
  }

  /** Prints an amount of money with two digits after the point, halves away from zero. */
  public static String money(BigDecimal amount) {
    return amount.setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  private static String fraction(long part, int decimals) {
    if (part == 0) {
      return "";
    }
    StringBuilder digits = new StringBuilder(Long.toString(part));
    while (digits.length() < decimals) {
      digits.insert(0, '0');
    }
    while (digits.charAt(digits.length() - 1) == '0') {
      digits.setLength(digits.length() - 1);
    }
    return "." + digits;
  }
}
