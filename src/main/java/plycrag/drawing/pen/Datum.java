package plycrag.drawing.pen;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Fill;
import plycrag.document.Xy;
import plycrag.layout.standing.SheetDatum;

/**
 * The corner that everything is measured from: a filled right triangle, its two edges thickened.
 */
public final class Datum {
  private static final double LEG = 4;
  private static final double EDGE = 10;
  private static final double THICK = 0.8;

  private Datum() {}

  /**
   * Draws it just outside the view, so that it hides nothing.
   *
   * @param corner where it is
   * @param sign 1 where the view lies to the right of it, -1 to the left
   */
  public static void outside(Sketch sketch, Xy corner, int sign) {
    draw(sketch, corner, sign, 1, -1);
  }

  /** What {@link #outside} takes where the view lies to the right of it. */
  public static List<Envelope> taken(Sketch sketch, Xy corner) {
    double thick = sketch.paper(THICK);
    double leg = sketch.paper(LEG);
    double edge = sketch.paper(EDGE);
    return List.of(
        new Envelope(corner.x() - leg, corner.x(), corner.y() - leg, corner.y()),
        new Envelope(corner.x(), corner.x() + edge, corner.y() - thick, corner.y()),
        new Envelope(corner.x() - thick, corner.x(), corner.y(), corner.y() + edge));
  }

  /** Draws it at the corner of a sheet from which that is measured. */
  public static void outside(Sketch sketch, SheetDatum datum) {
    draw(sketch, datum, -1);
  }

  /** The same inside a view that fills its page. */
  public static void inside(Sketch sketch, SheetDatum datum) {
    draw(sketch, datum, 1);
  }

  private static void draw(Sketch sketch, SheetDatum datum, int inward) {
    Xy corner = new Xy(datum.fromRight() ? datum.width() : 0, datum.fromTop() ? datum.height() : 0);
    draw(sketch, corner, datum.fromRight() ? -1 : 1, datum.fromTop() ? -1 : 1, inward);
  }

  private static void draw(Sketch sketch, Xy corner, int sign, int up, int inward) {
    double thick = sketch.paper(THICK) * inward;
    double leg = sketch.paper(LEG) * inward;
    double edge = sketch.paper(EDGE);
    fill(sketch, corner, corner.plus(leg * sign, 0), corner.plus(0, leg * up));
    fill(
        sketch,
        corner,
        corner.plus(edge * sign, 0),
        corner.plus(edge * sign, thick * up),
        corner.plus(0, thick * up));
    fill(
        sketch,
        corner,
        corner.plus(thick * sign, 0),
        corner.plus(thick * sign, edge * up),
        corner.plus(0, edge * up));
  }

  private static void fill(Sketch sketch, Xy... corners) {
    sketch.area(Layers.TINT, List.of(corners), Fill.INK);
  }
}
