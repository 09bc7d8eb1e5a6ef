package plycrag.drawing.flat;

import plycrag.document.Xy;
import plycrag.layout.standing.SheetDatum;
import plycrag.units.Tape;

/**
 * A tape on a sheet: what it shows from the two edges from which that is measured.
 *
 * @param datum the edges
 * @param tape as it is divided
 */
public record SheetTape(SheetDatum datum, Tape tape) {
  /** The readings of a place on the sheet, across and up. */
  public String words(Xy place) {
    return tape.reading(datum.across(place.x())) + " / " + tape.reading(datum.up(place.y()));
  }

  /** The nearest place that the tape can mark. */
  public Xy snap(Xy place) {
    return new Xy(
        datum.across(tape.snap(datum.across(place.x()))), datum.up(tape.snap(datum.up(place.y()))));
  }
}
