package plycrag.layout.pattern;

import plycrag.units.Tape;

/**
 * Rounds the places of a facet to the marking grid. A half goes to the nearer edge, so that the two
 * sides of a facet read the same from their own edges.
 *
 * @param tape what it is set out with
 * @param extent the facet's width or length, mm
 */
public record MarkingGrid(Tape tape, double extent) {

  /** The nearest place on the grid. */
  public double snap(double place) {
    return place > extent / 2 ? tape.snap(place) : -tape.snap(-place);
  }
}
