package plycrag.document;

/**
 * The part of the plane that a drawing shows, in model millimetres.
 *
 * @param left least x
 * @param low least y
 * @param right greatest x
 * @param high greatest y
 */
public record Extent(double left, double low, double right, double high) {
  /** Rejects an extent without area. */
  public Extent {
    if (!(left < right && low < high)) {
      throw new IllegalArgumentException("an extent needs an area");
    }
  }

  /** Its width, mm. */
  public double width() {
    return right - left;
  }

  /** Its height, mm. */
  public double height() {
    return high - low;
  }
}
