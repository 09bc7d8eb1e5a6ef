package plycrag.catalog;

/**
 * A bracket, a strap or a hinge with holes, as it is sold: two legs, alike.
 *
 * @param shape of it
 * @param leg from the bend, the middle or the pin to the end of each leg, mm
 * @param width of both legs, mm
 * @param thickness of the steel, mm
 * @param holes in each leg
 * @param lines in which they lie along the leg, one or two
 * @param first from the bend, the middle or the pin to the first of them, mm
 * @param pitch between them along the leg, mm
 * @param gauge between the two lines; 0 if there is one, mm
 * @param screw diameter of the screws for them, mm
 * @param inchScrew the same where screws have numbers, mm
 * @param source where the sizes are published
 */
public record FlatSteel(
    Shape shape,
    double leg,
    double width,
    double thickness,
    int holes,
    int lines,
    double first,
    double pitch,
    double gauge,
    double screw,
    double inchScrew,
    String source) {

  /** What it is. */
  public enum Shape {
    /** Bent square. */
    ANGLE,
    /** Flat. */
    STRAP,
    /** Two leaves that turn on a pin. */
    HINGE
  }

  /**
   * From the bend to the last hole of a leg that is used, mm.
   *
   * @param screws in that leg
   */
  public double last(int screws) {
    return first + ((screws + lines - 1) / lines - 1) * pitch;
  }
}
