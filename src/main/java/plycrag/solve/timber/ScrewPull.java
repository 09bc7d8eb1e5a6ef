package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * Screws that are pulled along themselves, EN 1995-1-1, 8.7.2, by declared values. N, mm, N/mm²,
 * kg/m³.
 */
public final class ScrewPull {
  private ScrewPull() {}

  /** Withdrawal square to the grain, (8.40a): n_ef f_ax d l_ef (ρ_k/ρ_a)^0.8. */
  public static Worked withdrawal(
      double number,
      double strength,
      double diameter,
      double length,
      double density,
      double declared) {
    return Worked.of("8.7.2, (8.40a)", "n_ef f_ax d l_ef (ρ_k/ρ_a)^0.8")
        .with("n_ef", number)
        .stress("f_ax", strength)
        .length("d", diameter)
        .length("l_ef", length)
        .with("ρ_k", density, "kg/m³")
        .with("ρ_a", declared, "kg/m³")
        .is(number * strength * diameter * length * Trig.power(density / declared, 0.8), "N");
  }

  /** Pulling the head through, (8.40b): n_ef f_head d_h² (ρ_k/ρ_a)^0.8. */
  public static Worked headThrough(
      double number, double strength, double head, double density, double declared) {
    return Worked.of("8.7.2, (8.40b)", "n_ef f_head d_h² (ρ_k/ρ_a)^0.8")
        .with("n_ef", number)
        .stress("f_head", strength)
        .length("d_h", head)
        .with("ρ_k", density, "kg/m³")
        .with("ρ_a", declared, "kg/m³")
        .is(number * strength * head * head * Trig.power(density / declared, 0.8), "N");
  }

  /** Pull and shear at once, 8.7.3 by (8.28): (F_ax/F_ax,Rd)² + (F_v/F_v,Rd)². */
  public static Worked together(double pull, double bearsPull, double shear, double bearsShear) {
    double first = pull / bearsPull;
    double second = shear / bearsShear;
    return Worked.of("8.7.3, (8.28)", "(F_ax/F_ax,Rd)² + (F_v/F_v,Rd)²")
        .with("F_ax", pull, "N")
        .with("F_ax,Rd", bearsPull, "N")
        .with("F_v", shear, "N")
        .with("F_v,Rd", bearsShear, "N")
        .is(first * first + second * second);
  }
}
