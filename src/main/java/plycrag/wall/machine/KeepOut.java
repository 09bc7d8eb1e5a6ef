package plycrag.wall.machine;

/**
 * A place on every sheet, as it lies on the machine, where no tool may come: a clamp, a screw that
 * holds the sheet, a stop.
 *
 * @param name what stands there
 * @param left from the sheet's left edge, below zero beside it, mm
 * @param low from its lower edge, likewise
 * @param width mm
 * @param height up the sheet, mm
 * @param rise how far it stands above the sheet's top, mm
 */
public record KeepOut(
    String name, double left, double low, double width, double height, double rise) {

  /** Its right edge, mm. */
  public double right() {
    return left + width;
  }

  /** Its upper edge, mm. */
  public double high() {
    return low + height;
  }
}
