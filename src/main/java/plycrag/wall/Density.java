package plycrag.wall;

/**
 * How many inserts there are to be.
 *
 * @param count of inserts
 * @param topCount the same at the top, where they thin out upward
 * @param per on what
 */
public record Density(int count, int topCount, Per per) {

  /** What inserts are counted on. */
  public enum Per {
    /** A square metre of the facet. */
    SQUARE_METRE,
    /** As much of it as a stock sheet covers. */
    SHEET
  }

  /** Whether there are more below than above, or fewer. */
  public boolean fades() {
    return count != topCount;
  }

  /**
   * How many there are to be on an area, as many above the middle as below it.
   *
   * @param area mm²
   * @param sheet a stock sheet's area, mm²
   */
  public double on(double area, double sheet) {
    return (count + topCount) / 2.0 * area / (per == Per.SHEET ? sheet : 1e6);
  }

  /**
   * How far apart they are where they are closest, mm, as far across as up.
   *
   * @param sheet a stock sheet's area, mm²
   */
  double spacing(double sheet) {
    return Math.sqrt((per == Per.SHEET ? sheet : 1e6) / Math.max(count, topCount));
  }

  /**
   * How high a part of the inserts goes that thin out evenly upward: 0 for none, 1 for all.
   *
   * @param part of all inserts, counted from below, 0 to 1
   */
  public double height(double part) {
    if (!fades()) {
      return part;
    }
    double foot = (double) count * count;
    double top = (double) topCount * topCount;
    return (Math.sqrt(foot + (top - foot) * part) - count) / (topCount - count);
  }
}
