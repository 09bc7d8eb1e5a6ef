package plycrag.solve.timber;

import java.util.List;

/** Bolts that are pulled along themselves. N, mm, N/mm². */
public final class BoltPull {
  private static final double STEEL = 1.25;

  private BoltPull() {}

  /** The wood under a washer, EN 1995-1-1, 8.5.2: 3 f_c,90,k on its ring. */
  public static Worked washer(double washer, double hole, double across) {
    return Worked.of("8.5.2 (2)", "3 f_c,90,k π/4 (D² − d_0²)")
        .stress("f_c,90,k", across)
        .length("D", washer)
        .length("d_0", hole)
        .is(3 * across * Math.PI / 4 * (washer * washer - hole * hole), "N");
  }

  /** The wood under a steel plate: as under a washer of min(12 t; 4 d), 8.5.2 (3). */
  public static Worked plate(double plate, double diameter, double hole, double across) {
    return washer(Math.min(12 * plate, 4 * diameter), hole, across);
  }

  /** The bolt itself in tension, EN 1993-1-8, Table 3.4: 0.9 f_ub A_s/γ_M2, a design value. */
  public static Worked tension(double strength, double area) {
    return steel("0.9 f_ub A_s/γ_M2", 0.9, strength, area);
  }

  /** The bolt itself in shear through its thread: 0.6 f_ub A_s/γ_M2, a design value. */
  public static Worked shear(double strength, double area) {
    return steel("0.6 f_ub A_s/γ_M2", 0.6, strength, area);
  }

  private static Worked steel(String formula, double part, double strength, double area) {
    return new Worked(
        "EN 1993-1-8, Table 3.4",
        formula,
        List.of(
            new Worked.Symbol("f_ub", strength, "N/mm²"),
            new Worked.Symbol("A_s", area, "mm²"),
            new Worked.Symbol("γ_M2", STEEL, "")),
        part * strength * area / STEEL,
        "N");
  }
}
