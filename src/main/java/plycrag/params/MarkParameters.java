package plycrag.params;

/**
 * How pieces are marked by a machine.
 *
 * @param height of capitals, mm
 * @param depth below the face, mm
 * @param behind whether in the back, even where the front lies up for all else
 * @param pins what holds a sheet in place that is worked on both faces
 */
public record MarkParameters(double height, double depth, boolean behind, Pins pins) {
  /**
   * Registration pins, which stand in the board and go through the sheet.
   *
   * @param diameter mm
   * @param depth into the board, mm
   */
  public record Pins(double diameter, double depth) {}
}
