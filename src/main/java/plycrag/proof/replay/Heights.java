package plycrag.proof.replay;

/**
 * Heights of a sheet on the machine, Z in mm from the programs' zero.
 *
 * @param sheet where its faces are
 * @param travel where the tool goes
 */
public record Heights(Faces sheet, Travel travel) {

  /**
   * Where the faces of the sheet are.
   *
   * @param top Z, mm
   * @param bottom Z, mm
   */
  public record Faces(double top, double bottom) {}

  /**
   * Where the tool goes.
   *
   * @param floor as low as it may, Z, mm
   * @param clearance at which it may go across, Z, mm
   * @param safe first and last, and over what holds the sheet, Z, mm
   */
  public record Travel(double floor, double clearance, double safe) {}
}
