package plycrag.wall;

/**
 * A place on a facet as the file gives it.
 *
 * @param across from the facet's left, mm
 * @param up from its lower edge, mm
 */
public record FacetPoint(double across, double up) {

  /** Which way it lies of the line from one place to another: above zero to the left, mm². */
  public double leftOf(FacetPoint from, FacetPoint to) {
    return (to.across - from.across) * (up - from.up) - (to.up - from.up) * (across - from.across);
  }
}
