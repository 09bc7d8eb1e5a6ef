package plycrag.solve.timber;

/**
 * Bearing across the grain, EN 1995-1-1, 6.1.5: F/A_ef ≤ k_c,90 f_c,90 (6.3), (6.4), the length of
 * contact being 30 mm longer on each side where timber goes on. Forces in N, lengths in mm.
 */
public final class AcrossGrainBearing {
  /** By how much at most contact counts as longer, mm. */
  public static final double BEYOND = 30;

  private AcrossGrainBearing() {}

  /**
   * The utilisation.
   *
   * @param length of contact along the grain
   * @param breadth of contact
   * @param beyond by how much it counts as longer, both sides together: at most 30 mm each, the
   *     distance to the end, the length of contact, or half of that to the next contact
   * @param factor k_c,90
   */
  public static Worked of(
      double force,
      double length,
      double breadth,
      double beyond,
      double factor,
      DesignStrength strength) {
    double area = breadth * (length + beyond);
    return Worked.of("6.1.5, (6.3), (6.4)", "F/(b (l + Δl))/(k_c,90 f_c,90)")
        .with("F", Math.abs(force), "N")
        .length("b", breadth)
        .length("l", length)
        .length("Δl", beyond)
        .with("k_c,90", factor)
        .stress("f_c,90", strength.across())
        .is(Math.abs(force) / (area * factor * strength.across()));
  }
}
