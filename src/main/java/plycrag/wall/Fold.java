package plycrag.wall;

/**
 * Where two facets meet.
 *
 * @param turn how much further the upper one leans out than the lower one, degrees; below zero it
 *     leans out less
 */
public record Fold(double turn) {

  /**
   * The angle of the plane that halves the fold, from square to either facet, degrees. Above zero
   * whatever ends in that plane is longer behind than in front.
   */
  public double bevel() {
    return turn / 2;
  }
}
