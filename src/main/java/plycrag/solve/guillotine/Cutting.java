package plycrag.solve.guillotine;

/**
 * What cutting takes.
 *
 * @param kerf between two neighbouring parts, mm: a saw's kerf, or a router bit's diameter and the
 *     gap beside it; not counted at the sheet's trimmed edge
 * @param trim margin that stays free round the sheet's edge, its cut included, mm
 */
public record Cutting(double kerf, double trim) {

  /** Refuses measures below zero. */
  public Cutting {
    if (!(kerf >= 0 && trim >= 0)) {
      throw new IllegalArgumentException("kerf or trim below 0");
    }
  }
}
