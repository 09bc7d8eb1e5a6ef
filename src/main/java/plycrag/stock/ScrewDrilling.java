package plycrag.stock;

import plycrag.wall.Screws;

/**
 * The holes that a screw wants.
 *
 * @param clearance in the sheet, diameter in mm: half a millimetre more than the thread, so that
 *     the screw draws the sheet to the timber
 * @param pilot in the timber, diameter in mm: 70 % of the root, which is about two thirds of the
 *     shank, for softwood (USDA Wood Handbook, FPL-GTR-190, chapter 8); none if not predrilled
 */
public record ScrewDrilling(double clearance, double pilot) {
  private static final double ROOT = 2.0 / 3;
  private static final double SOFTWOOD = 0.7;

  /** The holes for a screw. */
  public static ScrewDrilling of(Screws screws) {
    return of(screws.diameter(), screws.predrilled());
  }

  /** For screws through a gusset, mm. */
  public static ScrewDrilling forGusset(double diameter) {
    return of(diameter, true);
  }

  static ScrewDrilling of(double diameter, boolean predrilled) {
    double pilot = predrilled ? diameter * ROOT * SOFTWOOD : 0;
    return new ScrewDrilling(diameter + 0.5, Math.round(pilot * 10) / 10.0);
  }
}
