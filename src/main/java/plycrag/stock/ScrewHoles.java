package plycrag.stock;

import plycrag.params.ScrewParameters;

/**
 * The holes that a screw wants.
 *
 * @param clearance in the sheet, diameter in mm: half a millimetre more than the thread, so that
 *     the screw draws the sheet to the timber
 * @param pilot in the timber, diameter in mm: 70 % of the root, which is about two thirds of the
 *     shank, for softwood (USDA Wood Handbook, FPL-GTR-190, chapter 8); none if not predrilled
 */
public record ScrewHoles(double clearance, double pilot) {
  private static final double ROOT = 2.0 / 3;
  private static final double SOFTWOOD = 0.7;

  /** The holes for a screw. */
  public static ScrewHoles of(ScrewParameters screws) {
    return of(screws.diameter(), screws.predrilled());
  }

  /** For screws through a gusset, mm. */
  public static ScrewHoles forGusset(double diameter) {
    return of(diameter, true);
  }

  static ScrewHoles of(double diameter, boolean predrilled) {
    double pilot = predrilled ? diameter * ROOT * SOFTWOOD : 0;
    return new ScrewHoles(diameter + 0.5, Math.round(pilot * 10) / 10.0);
  }
}
