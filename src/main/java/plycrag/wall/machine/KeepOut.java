package plycrag.wall.machine;

/**
 * A place on every sheet, as it lies on the machine, where no tool may come: a clamp, a screw that
 * holds the sheet, a stop.
 *
 * @param name what stands there
 * @param corner its lower left one
 * @param size how far it goes from there
 * @param rise how far it stands above the sheet's top, mm
 */
public record KeepOut(String name, Corner corner, Size size, double rise) {

  /**
   * The lower left corner of such a place.
   *
   * @param left from the sheet's left edge, below zero beside it, mm
   * @param low from its lower edge, likewise
   */
  public record Corner(double left, double low) {}

  /**
   * How large such a place is.
   *
   * @param width mm
   * @param height up the sheet, mm
   */
  public record Size(double width, double height) {}

  /** Its right edge, mm. */
  public double right() {
    return corner.left() + size.width();
  }

  /** Its upper edge, mm. */
  public double high() {
    return corner.low() + size.height();
  }
}
