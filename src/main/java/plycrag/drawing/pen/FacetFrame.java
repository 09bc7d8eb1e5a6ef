package plycrag.drawing.pen;

import org.locationtech.jts.geom.Point;
import plycrag.document.Xy;

/**
 * Maps a facet's (u, v) to a drawing: as it is, or mirrored for a view from behind.
 *
 * @param mirrored whether it is seen from behind
 * @param width of the facet, mm
 */
public record FacetFrame(boolean mirrored, double width) {

  /** A place on the drawing, mm. */
  public Xy at(double u, double v) {
    return new Xy(mirrored ? width - u : u, v);
  }

  /** A place on the drawing, mm. */
  public Xy at(Point place) {
    return at(place.getX(), place.getY());
  }
}
