package plycrag.catalog;

/**
 * A bracket, a strap or a hinge with holes: two legs, alike.
 *
 * @param shape of it
 * @param article what it is sold as; empty for one that is asked for by what it must be
 * @param legs both
 * @param holes in each leg
 * @param screws for them
 * @param source where the sizes are published
 */
public record FlatSteel(
    Shape shape, String article, Legs legs, Holes holes, ScrewSizes screws, String source) {

  /**
   * Its legs, alike.
   *
   * @param length from the bend, the middle or the pin to the end of each, mm
   * @param width of both, mm
   * @param thickness of the steel, mm
   */
  public record Legs(double length, double width, double thickness) {}

  /**
   * The holes in each leg.
   *
   * @param count in each
   * @param lines in which they lie along the leg, one or two
   * @param first from the bend, the middle or the pin to the first of them, mm
   * @param pitch between them along the leg, mm
   * @param gauge between the two lines; 0 if there is one, mm
   */
  public record Holes(int count, int lines, double first, double pitch, double gauge) {}

  /**
   * The screws for the holes.
   *
   * @param metric their diameter, mm
   * @param inch the same where screws have numbers, mm
   */
  public record ScrewSizes(double metric, double inch) {}

  /** What it is. */
  public enum Shape {
    /** Bent square. */
    ANGLE,
    /** Flat. */
    STRAP,
    /** Two leaves that turn on a pin. */
    HINGE
  }

  /** Whether it is one that somebody sells, and not a size alone. */
  public boolean isSold() {
    return !article.isEmpty();
  }

  /**
   * From the bend to the last hole of a leg that is used, mm.
   *
   * @param used screws in that leg
   */
  public double last(int used) {
    int rows = (used + holes.lines() - 1) / holes.lines();
    return holes.first() + (rows - 1) * holes.pitch();
  }
}
