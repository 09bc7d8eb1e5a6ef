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
}
