package plycrag.layout.pattern;

import plycrag.units.Tape;

/**
 * Rounds the places of a facet to the marking grid. A half goes to the nearer edge, so that the two
 * sides of a facet read the same from their own edges.
 */
public final class MarkingGrid {
  private final Tape tape;
  private final double extent;

  /**
   * @param tape what it is set out with
   * @param extent the facet's width or length, mm
   */
  public MarkingGrid(Tape tape, double extent) {
    this.tape = tape;
    this.extent = extent;
  }

  /** The nearest place on the grid. */
  public double snap(double place) {
    return place > extent / 2 ? tape.snap(place) : -tape.snap(-place);
  }
}
