package plycrag.document;

/**
 * A place of a tool's tip.
 *
 * @param x to the right, mm
 * @param y up the sheet, mm
 * @param z up, mm
 */
public record Xyz(double x, double y, double z) {
  /** Rejects what no file may hold. */
  public Xyz {
    if (!Double.isFinite(x + y + z)) {
      throw new IllegalArgumentException("not a place: " + x + ", " + y + ", " + z);
    }
  }

  /** The same place at another height. */
  public Xyz at(double height) {
    return new Xyz(x, y, height);
  }

  /** Seen from above. */
  public Xy flat() {
    return new Xy(x, y);
  }
}
