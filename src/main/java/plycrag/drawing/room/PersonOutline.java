package plycrag.drawing.room;

import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;

/** A person for scale, as a plain outline. */
final class PersonOutline {
  /** A person's height (a choice: a round figure), mm. */
  static final double HEIGHT = 1750;

  /** How far in front of the wall's outermost edge the person stands, mm. */
  static final double STEP = 700;

  private static final double UNIT = HEIGHT / 35;
  private static final double[][] HALF = {
    {1, 0},
    {1.6, 0},
    {1.9, 15},
    {2.4, 15.5},
    {2.6, 22},
    {3.4, 22},
    {3.4, 14},
    {4.4, 14},
    {4.4, 28},
    {1.2, 29.2}
  };

  private PersonOutline() {}

  /** Where a place beside and above the feet lies on a drawing. */
  @FunctionalInterface
  interface Place {
    /** The place, from so many mm to the right of the feet and above them. */
    Xy at(double right, double up);
  }

  /** Draws the outline. */
  static void draw(Sketch sketch, Place place) {
    sketch.circle(Layers.CONTEXT, place.at(0, 32.4 * UNIT), 2.4 * UNIT);
    for (int sign = -1; sign <= 1; sign += 2) {
      for (int at = 1; at < HALF.length; at++) {
        sketch.line(Layers.CONTEXT, at(place, sign, HALF[at - 1]), at(place, sign, HALF[at]));
      }
      sketch.line(Layers.CONTEXT, place.at(sign * UNIT, 0), place.at(sign * 0.3 * UNIT, 15 * UNIT));
    }
  }

  private static Xy at(Place place, int sign, double[] corner) {
    return place.at(sign * corner[0] * UNIT, corner[1] * UNIT);
  }
}
