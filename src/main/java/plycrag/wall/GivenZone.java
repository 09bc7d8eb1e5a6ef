package plycrag.wall;

/**
 * A part of a facet with a pattern of its own.
 *
 * @param facet the facet's name
 * @param name printed beside it
 * @param shape where it lies
 * @param points what the pattern tells the places of
 * @param pattern how they are set out
 */
public record GivenZone(
    String facet, String name, FacetShape shape, Points points, Pattern pattern) {

  /** What the places of a zone are for. */
  public enum Points {
    /** Threaded inserts, instead of those of the facet's own pattern. */
    INSERTS,
    /** Plain screws of holds that are screwed on, between the inserts. */
    SCREW_POINTS
  }
}
