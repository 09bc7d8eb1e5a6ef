package plycrag.document;

/**
 * A place on a drawing or a machine.
 *
 * @param x to the right, mm
 * @param y up, mm
 */
public record Xy(double x, double y) {
  /** Rejects what no file may hold. */
  public Xy {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("not a place: " + x + ", " + y);
    }
  }

  /** The place moved by a distance. */
  public Xy plus(double dx, double dy) {
    return new Xy(x + dx, y + dy);
  }
}
