package plycrag.solve.timber;

/**
 * Deflection when creep has ended, EN 1995-1-1, 2.2.3: w_fin = w_G (1 + k_def) + w_Q (1 + ψ_2
 * k_def) (2.3), (2.4). mm.
 */
public final class CreptDeflection {
  private CreptDeflection() {}

  /** Of what permanent and variable loads deflect at once. */
  public static Worked of(double permanent, double variable, double lasting, double creep) {
    return Worked.of("2.2.3, (2.3), (2.4)", "w_G (1 + k_def) + w_Q (1 + ψ_2 k_def)")
        .length("w_G", permanent)
        .with("k_def", creep)
        .length("w_Q", variable)
        .with("ψ_2", lasting)
        .is(permanent * (1 + creep) + variable * (1 + lasting * creep), "mm");
  }
}
