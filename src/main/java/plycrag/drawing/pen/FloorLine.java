package plycrag.drawing.pen;

import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;

/** The floor where a view cuts it: a line, hatched below. */
public final class FloorLine {
  private static final double HATCH = 2;

  private FloorLine() {}

  /** Draws it at height 0 from the left to the right, x in mm; what it takes. */
  public static Envelope draw(Sketch sketch, double left, double right) {
    sketch.line(Layers.PARTS, new Xy(left, 0), new Xy(right, 0));
    double hatch = sketch.paper(HATCH);
    for (double x = left + hatch; x < right; x += 2 * hatch) {
      sketch.line(Layers.CONTEXT, new Xy(x, 0), new Xy(x - hatch, -hatch));
    }
    return new Envelope(left, right, -hatch, 0);
  }
}
