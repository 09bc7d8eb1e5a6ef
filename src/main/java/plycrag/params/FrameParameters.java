package plycrag.params;

/**
 * The framing behind the sheets.
 *
 * @param breadth the side of the section that lies against the sheet, mm
 * @param depth the other side, mm
 * @param studSpacing greatest, centre to centre, mm
 * @param seams what backs a seam
 */
public record FrameParameters(double breadth, double depth, double studSpacing, SeamBacking seams) {

  /** What backs a seam. */
  public enum SeamBacking {
    /** Two members on edge, side by side, one for each piece. */
    DOUBLED,
    /** One member laid flat, its greater side against both pieces. */
    FLAT,
    /** One member on edge for both pieces. */
    SHARED
  }
}
