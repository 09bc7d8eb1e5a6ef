package plycrag.solve.timber;

/**
 * How design values come from characteristic ones: X_d = k_mod X_k / γ_M, EN 1995-1-1, (2.14).
 *
 * @param kMod for duration of load and moisture
 * @param gammaM for the material
 */
public record DesignBasis(double kMod, double gammaM) {
  /** The design value of a characteristic one, in its unit. */
  public double of(double characteristic) {
    return kMod * characteristic / gammaM;
  }
}
