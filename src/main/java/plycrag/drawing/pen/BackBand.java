package plycrag.drawing.pen;

import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;

/** Thin diagonal lines along the top of a view from behind, so that nobody takes it for a front. */
public final class BackBand {
  private static final double GAP = 1;
  private static final double HEIGHT = 3;
  private static final double STEP = 2;

  private BackBand() {}

  /**
   * Draws it above a view; what it takes.
   *
   * @param left where it begins, x in mm
   * @param right where it ends
   * @param top of the view, y in mm
   */
  public static Envelope draw(Sketch sketch, double left, double right, double top) {
    double low = top + sketch.paper(GAP);
    double height = sketch.paper(HEIGHT);
    for (double x = left; x + height <= right; x += sketch.paper(STEP)) {
      sketch.line(Layers.CONTEXT, new Xy(x, low), new Xy(x + height, low + height));
    }
    return new Envelope(left, right, low, low + height);
  }
}
