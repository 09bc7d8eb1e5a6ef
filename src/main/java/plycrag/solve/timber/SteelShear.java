package plycrag.solve.timber;

import java.util.List;

/**
 * Fasteners in shear between steel and wood, EN 1995-1-1, 8.2.3, without rope effect: each way to
 * yield with what it bears, F_v,Rk in N a shear plane and fastener; the least governs. Steel is
 * thin up to half a diameter, thick from a whole one; between, {@link #between}.
 */
public final class SteelShear {
  private final Dowel dowel;
  private final WoodLayer wood;

  /** On wood, or through it: then its thickness is the whole, t_2. */
  public SteelShear(Dowel dowel, WoodLayer wood) {
    this.dowel = dowel;
    this.wood = wood;
  }

  /** A thin plate on one side, (8.9). */
  public List<Worked> thin() {
    return List.of(
        worked("(8.9) (a)", "0.4 f_h t_1 d", 0.4 * pressed()),
        worked("(8.9) (b)", "1.15 √(2 M_y f_h d)", bentThin()));
  }

  /** A thick plate on one side, (8.10). */
  public List<Worked> thick() {
    return List.of(
        worked("(8.10) (c)", "f_h t_1 d", pressed()),
        worked("(8.10) (d)", "f_h t_1 d (√(2 + 4 M_y/(f_h d t_1²)) − 1)", bentOnce()),
        worked("(8.10) (e)", "2.3 √(M_y f_h d)", bentThick()));
  }

  /** A plate in a slot, of any thickness, (8.11). */
  public List<Worked> slotted() {
    return List.of(
        worked("(8.11) (f)", "f_h t_1 d", pressed()),
        worked("(8.11) (g)", "f_h t_1 d (√(2 + 4 M_y/(f_h d t_1²)) − 1)", bentOnce()),
        worked("(8.11) (h)", "2.3 √(M_y f_h d)", bentThick()));
  }

  /** Thin plates on both sides, (8.12). */
  public List<Worked> thinOutside() {
    return List.of(
        worked("(8.12) (j)", "0.5 f_h t_2 d", pressed() / 2),
        worked("(8.12) (k)", "1.15 √(2 M_y f_h d)", bentThin()));
  }

  /** Thick plates on both sides, (8.13). */
  public List<Worked> thickOutside() {
    return List.of(
        worked("(8.13) (l)", "0.5 f_h t_2 d", pressed() / 2),
        worked("(8.13) (m)", "2.3 √(M_y f_h d)", bentThick()));
  }

  /** What a plate of some thickness bears between what a thin and a thick one do, 8.2.3 (1). */
  public static Worked between(double plate, double diameter, Worked thin, Worked thick) {
    double part = Math.max(0, Math.min(1, 2 * plate / diameter - 1));
    return Worked.of("8.2.3 (1)", "F_thin + (t/(d/2) − 1) (F_thick − F_thin)")
        .length("t", plate)
        .length("d", diameter)
        .with("F_thin", thin.value(), "N")
        .with("F_thick", thick.value(), "N")
        .is(thin.value() + part * (thick.value() - thin.value()), "N");
  }

  private double pressed() {
    return wood.embedment() * wood.thickness() * dowel.diameter();
  }

  private double bentOnce() {
    double bends = dowel.yieldMoment() / (pressed() * wood.thickness());
    return pressed() * (Math.sqrt(2 + 4 * bends) - 1);
  }

  private double bentThin() {
    return 1.15 * Math.sqrt(2 * dowel.yieldMoment() * wood.embedment() * dowel.diameter());
  }

  private double bentThick() {
    return 2.3 * Math.sqrt(dowel.yieldMoment() * wood.embedment() * dowel.diameter());
  }

  private Worked worked(String place, String formula, double value) {
    return Worked.of("8.2.3, " + place, formula)
        .stress("f_h", wood.embedment())
        .length("t", wood.thickness())
        .length("d", dowel.diameter())
        .with("M_y", dowel.yieldMoment(), "N mm")
        .is(value, "N");
  }
}
