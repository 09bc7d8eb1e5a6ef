package plycrag.layout.skin;

/**
 * Where two pieces meet, side by side or one above the other, or two rows of them.
 *
 * @param axis along which it runs
 * @param middle of the gap, on the other axis, mm
 * @param gap its width, mm
 * @param low where it begins along its axis, mm
 * @param high where it ends, mm
 */
public record Seam(Axis axis, double middle, double gap, double low, double high) {

  /** The same further on across it, mm. */
  public Seam moved(double by) {
    return new Seam(axis, middle + by, gap, low, high);
  }
}
