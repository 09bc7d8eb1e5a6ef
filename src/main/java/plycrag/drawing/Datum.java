package plycrag.drawing;

import java.util.List;
import plycrag.document.Fill;
import plycrag.document.Xy;

/**
 * The corner that everything is measured from: a filled right triangle, its two edges thickened.
 */
final class Datum {
  private static final double LEG = 5;
  private static final double EDGE = 12;
  private static final double THICK = 0.9;

  private Datum() {}

  /**
   * Draws it inside the view.
   *
   * @param corner where it is
   * @param sign 1 where the view lies to the right of it, -1 to the left
   */
  static void draw(Sketch sketch, Xy corner, int sign) {
    double leg = sketch.paper(LEG) * sign;
    double edge = sketch.paper(EDGE) * sign;
    double thick = sketch.paper(THICK);
    sketch.area(
        Layers.TINT,
        List.of(corner, corner.plus(leg, 0), corner.plus(0, sketch.paper(LEG))),
        Fill.INK);
    sketch.area(
        Layers.TINT,
        List.of(corner, corner.plus(edge, 0), corner.plus(edge, thick), corner.plus(0, thick)),
        Fill.INK);
    sketch.area(
        Layers.TINT,
        List.of(
            corner,
            corner.plus(thick * sign, 0),
            corner.plus(thick * sign, sketch.paper(EDGE)),
            corner.plus(0, sketch.paper(EDGE))),
        Fill.INK);
  }
}
