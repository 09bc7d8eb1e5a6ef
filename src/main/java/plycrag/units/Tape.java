package plycrag.units;

/**
 * Reads lengths the way a tape shows them: millimetres, or inches with a fraction down to 1/16.
 *
 * @param unit the tape's unit
 */
public record Tape(LengthUnit unit) {
  private static final int SIXTEENTHS = 16;
  private static final int FINEST = 64;

  /** What a quotient of two lengths may be short of a whole or a half, in steps. */
  private static final double QUOTIENT = 1e-9;

  /** A size given in decimals of an inch so near to a fraction is it, in 64ths. */
  private static final double FRACTION = 1e-6;

  /** The nearest step of the marking grid, halves up; in millimetres. */
  public double snap(double millimetres) {
    return Math.floor(millimetres / unit.markingGrid() + 0.5 + QUOTIENT) * unit.markingGrid();
  }

  /** The greatest step of the marking grid that is not above the length; in millimetres. */
  public double snapDown(double millimetres) {
    return Math.floor(millimetres / unit.markingGrid() + QUOTIENT) * unit.markingGrid();
  }

  /** The least step of the marking grid that is not below the length; in millimetres. */
  public double snapUp(double millimetres) {
    return Math.ceil(millimetres / unit.markingGrid() - QUOTIENT) * unit.markingGrid();
  }

  /** Whole centimetres, or whole inches in inch files; halves up. */
  public String division(double millimetres) {
    return Decimal.of(Math.floor(millimetres / unit.tapeDivision() + 0.5 + QUOTIENT), 0);
  }

  /**
   * The reading to the marking grid in the tape's numbered divisions: {@code 56.3}, {@code
   * 22-1/16}.
   */
  public String fineDivision(double millimetres) {
    return unit == LengthUnit.MM
        ? Decimal.of(snap(millimetres) / unit.tapeDivision(), 1)
        : inches(millimetres, "-");
  }

  /** A reading without its unit: {@code 532.5}, {@code 20 15/16}. */
  public String reading(double millimetres) {
    return unit == LengthUnit.MM ? Decimal.of(millimetres, 1) : inches(millimetres, " ");
  }

  /**
   * A size as it is, with its unit, not rounded to the marking grid: {@code 18.2 mm}, {@code 23/32
   * in}, {@code 0.19 in}.
   */
  public String size(double millimetres) {
    return bareSize(millimetres) + " " + unit.word();
  }

  /** The same without its unit. */
  public String bareSize(double millimetres) {
    if (unit == LengthUnit.MM) {
      return Decimal.of(millimetres, 2);
    }
    double parts = millimetres / unit.millimetres() * FINEST;
    return Math.abs(parts - Math.round(parts)) < FRACTION
        ? inches(Math.round(parts), FINEST, " ")
        : Decimal.of(millimetres / unit.millimetres(), 3);
  }

  /** A reading with its unit: {@code 532.5 mm}, {@code 20 15/16 in}. */
  public String text(double millimetres) {
    return reading(millimetres) + " " + unit.word();
  }

  /** A thing with its place: {@code the stud at 600 mm}. */
  public String placed(String thing, double millimetres) {
    return "the " + thing + " at " + text(millimetres);
  }

  private String inches(double millimetres, String joint) {
    return inches(Math.round(snap(millimetres) / unit.markingGrid()), SIXTEENTHS, joint);
  }

  private static String inches(long parts, int of, String joint) {
    String sign = parts < 0 ? "-" : "";
    long whole = Math.abs(parts) / of;
    long rest = Math.abs(parts) % of;
    if (rest == 0) {
      return sign + whole;
    }
    int shift = Long.numberOfTrailingZeros(rest);
    String fraction = (rest >> shift) + "/" + (of >> shift);
    return sign + (whole == 0 ? fraction : whole + joint + fraction);
  }
}
