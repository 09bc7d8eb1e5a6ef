package plycrag.geometry;

/** Trigonometry in degrees, the same bits on every machine. */
public final class Trig {
  private Trig() {}

  /** Sine of an angle in degrees. */
  public static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }

  /** Cosine of an angle in degrees. */
  public static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  /** Tangent of an angle in degrees. */
  public static double tan(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }

  /** The angle whose tangent is {@code opposite / adjacent}, degrees from -90 to 90. */
  public static double angle(double opposite, double adjacent) {
    return StrictMath.toDegrees(StrictMath.atan2(opposite, adjacent));
  }

  /** The hyperbolic tangent of a number. */
  public static double hyperbolicTangent(double number) {
    return StrictMath.tanh(number);
  }

  /** A positive number to some power. */
  public static double power(double number, double exponent) {
    return StrictMath.pow(number, exponent);
  }
}
