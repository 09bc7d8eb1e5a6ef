package plycrag.wall;

import java.util.List;
import java.util.Optional;

/**
 * One plane of the climbing face.
 *
 * @param name printed before every mark on it
 * @param angle from vertical, degrees; positive leans out over the climber
 * @param told how long it is, and by which key
 * @param width across, along its lower edge, mm
 * @param outline its corners, in order round it, if it is no rectangle; length and width are its
 *     own then
 * @param shift how far its left stands to the right of that of the facet below, mm
 * @param beside the wall that it begins, if it stands beside another
 */
public record GivenFacet(
    String name,
    double angle,
    ToldLength told,
    double width,
    Optional<List<FacetPoint>> outline,
    double shift,
    Optional<Beside> beside) {

  /** Up the slope, mm. */
  public double length() {
    return told.length();
  }

  /**
   * What a wall stands beside.
   *
   * @param facet the lowest facet of the wall on its left, by name
   * @param turn how far it is turned from that one, seen from above, degrees; above zero toward the
   *     climber
   */
  public record Beside(String facet, double turn) {}
}
