package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * How far joints give, EN 1995-1-1, Table 7.1: K_ser in N/mm a shear plane and fastener; K_u is two
 * thirds (2.1); steel to wood twice as much (7.1 (3)). Mean densities in kg/m³, of two woods the
 * geometric mean (7.1); mm. Clearance of bolts comes on top.
 */
public final class FastenerSlip {
  private FastenerSlip() {}

  /** ρ_m of two woods, (7.1). */
  public static double density(double one, double other) {
    return Math.sqrt(one * other);
  }

  /** Bolts, screws and predrilled nails: ρ_m^1.5 d/23. */
  public static Worked bolt(double density, double diameter) {
    return worked("ρ_m^1.5 d/23", density, diameter)
        .is(density * Math.sqrt(density) * diameter / 23, "N/mm");
  }

  /** Nails: ρ_m^1.5 d^0.8/30. */
  public static Worked nail(double density, double diameter) {
    return worked("ρ_m^1.5 d^0.8/30", density, diameter)
        .is(density * Math.sqrt(density) * Trig.power(diameter, 0.8) / 30, "N/mm");
  }

  private static Worked.Draft worked(String formula, double density, double diameter) {
    return Worked.of("Table 7.1", formula).with("ρ_m", density, "kg/m³").length("d", diameter);
  }

  /** For strength, (2.1): two thirds of that for use. */
  public static double ultimate(double inUse) {
    return 2 * inUse / 3;
  }
}
