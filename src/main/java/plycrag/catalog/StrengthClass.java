package plycrag.catalog;

/**
 * A strength class of sawn timber; N/mm² and kg/m³.
 *
 * @param name as stamped on it
 * @param bending f_m,k
 * @param tension f_t,0,k
 * @param compression f_c,0,k
 * @param across f_c,90,k
 * @param shear f_v,k
 * @param stiffness its moduli
 * @param density ρ_k, by which fasteners hold
 * @param meanDensity ρ_mean
 * @param source where the row stands
 */
public record StrengthClass(
    String name,
    double bending,
    double tension,
    double compression,
    double across,
    double shear,
    Moduli stiffness,
    double density,
    double meanDensity,
    String source) {

  /**
   * How stiff it is, N/mm².
   *
   * @param mean E_0,mean
   * @param fifth E_0,05
   * @param shear G_mean
   */
  public record Moduli(double mean, double fifth, double shear) {}
}
