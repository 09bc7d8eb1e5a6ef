package plycrag.params;

/**
 * How many inserts there are to be.
 *
 * @param count of inserts
 * @param per on what
 */
public record Density(int count, Per per) {

  /** What inserts are counted on. */
  public enum Per {
    /** A square metre of the facet. */
    SQUARE_METRE,
    /** As much of it as a stock sheet covers. */
    SHEET
  }

  /**
   * How many there are to be on an area.
   *
   * @param area mm²
   * @param sheet a stock sheet's area, mm²
   */
  public double on(double area, double sheet) {
    return count * area / (per == Per.SHEET ? sheet : 1e6);
  }
}
