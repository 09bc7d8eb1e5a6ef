package plycrag.solve.timber;

import java.util.List;

/**
 * Fasteners in shear between layers of wood, EN 1995-1-1, 8.2.2, without rope effect: each way to
 * yield with what it bears, F_v,Rk in N a shear plane and fastener; the least governs. β =
 * f_h,2/f_h,1.
 */
public final class TimberShear {
  private final Dowel dowel;
  private final WoodLayer first;
  private final WoodLayer second;
  private final double beta;

  /** Between two layers; in double shear the first is that of the sides, the second the middle. */
  public TimberShear(Dowel dowel, WoodLayer first, WoodLayer second) {
    this.dowel = dowel;
    this.first = first;
    this.second = second;
    this.beta = second.embedment() / first.embedment();
  }

  /** In single shear, (8.6) (a) to (f). */
  public List<Worked> single() {
    return List.of(
        worked("(8.6) (a)", "f_h,1 t_1 d", pressed(first)),
        worked("(8.6) (b)", "f_h,2 t_2 d", pressed(second)),
        worked(
            "(8.6) (c)",
            "f_h,1 t_1 d/(1+β) (√(β + 2β²(1 + t_2/t_1 + (t_2/t_1)²) + β³(t_2/t_1)²)"
                + " − β(1 + t_2/t_1))",
            turned()),
        worked(
            "(8.6) (d)",
            "1.05 f_h,1 t_1 d/(2+β) (√(2β(1+β) + 4β(2+β) M_y/(f_h,1 d t_1²)) − β)",
            bentInFirst()),
        worked(
            "(8.6) (e)",
            "1.05 f_h,1 t_2 d/(1+2β) (√(2β²(1+β) + 4β(1+2β) M_y/(f_h,1 d t_2²)) − β)",
            bentInSecond()),
        worked("(8.6) (f)", "1.15 √(2β/(1+β)) √(2 M_y f_h,1 d)", bentTwice()));
  }

  /** In double shear, symmetrical, (8.7) (g) to (k), a plane. */
  public List<Worked> twice() {
    return List.of(
        worked("(8.7) (g)", "f_h,1 t_1 d", pressed(first)),
        worked("(8.7) (h)", "0.5 f_h,2 t_2 d", pressed(second) / 2),
        worked(
            "(8.7) (j)",
            "1.05 f_h,1 t_1 d/(2+β) (√(2β(1+β) + 4β(2+β) M_y/(f_h,1 d t_1²)) − β)",
            bentInFirst()),
        worked("(8.7) (k)", "1.15 √(2β/(1+β)) √(2 M_y f_h,1 d)", bentTwice()));
  }

  private double pressed(WoodLayer layer) {
    return layer.embedment() * layer.thickness() * dowel.diameter();
  }

  private double turned() {
    double ratio = second.thickness() / first.thickness();
    double root =
        beta + 2 * beta * beta * (1 + ratio + ratio * ratio) + beta * beta * beta * ratio * ratio;
    return pressed(first) / (1 + beta) * (Math.sqrt(root) - beta * (1 + ratio));
  }

  private double bentInFirst() {
    double root = 2 * beta * (1 + beta) + 4 * beta * (2 + beta) * bends(first.thickness());
    return 1.05 * pressed(first) / (2 + beta) * (Math.sqrt(root) - beta);
  }

  private double bentInSecond() {
    double root =
        2 * beta * beta * (1 + beta) + 4 * beta * (1 + 2 * beta) * bends(second.thickness());
    double pressed = first.embedment() * second.thickness() * dowel.diameter();
    return 1.05 * pressed / (1 + 2 * beta) * (Math.sqrt(root) - beta);
  }

  private double bentTwice() {
    return 1.15
        * Math.sqrt(2 * beta / (1 + beta))
        * Math.sqrt(2 * dowel.yieldMoment() * first.embedment() * dowel.diameter());
  }

  private double bends(double thickness) {
    return dowel.yieldMoment() / (first.embedment() * dowel.diameter() * thickness * thickness);
  }

  private Worked worked(String place, String formula, double value) {
    return Worked.of("8.2.2, " + place, formula)
        .stress("f_h,1", first.embedment())
        .length("t_1", first.thickness())
        .stress("f_h,2", second.embedment())
        .length("t_2", second.thickness())
        .with("β", beta)
        .length("d", dowel.diameter())
        .with("M_y", dowel.yieldMoment(), "N mm")
        .is(value, "N");
  }
}
