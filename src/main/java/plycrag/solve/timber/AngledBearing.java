package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * Bearing at an angle to the grain, EN 1995-1-1, 6.2.2: σ ≤ f_c,0/(f_c,0/(k_c,90 f_c,90) sin²α +
 * cos²α) (6.16), after R. Hankinson. N/mm²; angles in degrees.
 */
public final class AngledBearing {
  private AngledBearing() {}

  /** What it bears. */
  public static Worked strength(DesignStrength strength, double factor, double angle) {
    double sine = Trig.sin(angle);
    double cosine = Trig.cos(angle);
    double across = factor * strength.across();
    return Worked.of("6.2.2, (6.16)", "f_c,0/(f_c,0/(k_c,90 f_c,90) sin²α + cos²α)")
        .stress("f_c,0", strength.compression())
        .with("k_c,90", factor)
        .stress("f_c,90", strength.across())
        .with("α", angle, "°")
        .is(
            strength.compression()
                / (strength.compression() / across * sine * sine + cosine * cosine),
            "N/mm²");
  }

  /** The utilisation of a force, N, on an area, mm². */
  public static Worked of(
      double force, double area, DesignStrength strength, double factor, double angle) {
    Worked bears = strength(strength, factor, angle);
    return Worked.of("6.2.2, (6.16)", "F/A/f_c,α")
        .with("F", Math.abs(force), "N")
        .with("A", area, "mm²")
        .stress("f_c,α", bears.value())
        .is(Math.abs(force) / area / bears.value());
  }
}
