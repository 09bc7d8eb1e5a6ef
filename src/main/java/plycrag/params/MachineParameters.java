package plycrag.params;

/**
 * The router.
 *
 * @param zZero where Z is zero
 * @param breakthrough how far a through hole goes on below the sheet, mm
 * @param clearanceHeight above the sheet's top: between holes, mm
 * @param safeHeight above the sheet's top: first and last, over clamps, mm
 * @param spindleSpeed revolutions per minute
 * @param plungeFeed mm/min
 * @param dwell from spindle start to the first hole, seconds
 */
public record MachineParameters(
    ZZero zZero,
    double breakthrough,
    double clearanceHeight,
    double safeHeight,
    double spindleSpeed,
    double plungeFeed,
    double dwell) {

  /** Where Z is zero. */
  public enum ZZero {
    /** On the table that the sheet lies on. */
    SPOILBOARD,
    /** On top of the sheet. */
    SHEET_TOP
  }
}
