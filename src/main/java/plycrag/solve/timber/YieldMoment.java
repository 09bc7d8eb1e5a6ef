package plycrag.solve.timber;

import plycrag.geometry.Trig;

/**
 * The moment at which a round fastener yields, EN 1995-1-1, (8.14) and (8.30): M_y,Rk = 0.3 f_u
 * d^2.6, N mm.
 */
public final class YieldMoment {
  private YieldMoment() {}

  /** Of its tensile strength, N/mm², and its diameter, of screws the effective one, mm. */
  public static Worked of(double strength, double diameter) {
    return Worked.of("8.5.1.1, (8.30); 8.3.1.1, (8.14)", "0.3 f_u d^2.6")
        .stress("f_u", strength)
        .length("d", diameter)
        .is(0.3 * strength * Trig.power(diameter, 2.6), "N mm");
  }
}
