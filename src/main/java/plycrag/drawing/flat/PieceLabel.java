package plycrag.drawing.flat;

import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.layout.skin.Piece;

/**
 * Writes on a piece which it is and which sheet it comes from: level where there is room, else
 * upright, else close to its neighbours, else its mark alone.
 */
final class PieceLabel {
  private static final double EASY = 1.6;
  private static final double TIGHT = 0.9;

  private final FreeSpot spots;
  private final FacetFrame frame;
  private final Sketch sketch;

  /**
   * Writes on one facet's pieces.
   *
   * @param spots where there is room, in (u, v)
   * @param frame where (u, v) lies on the drawing
   * @param sketch what is drawn on
   */
  PieceLabel(FreeSpot spots, FacetFrame frame, Sketch sketch) {
    this.spots = spots;
    this.frame = frame;
    this.sketch = sketch;
  }

  void draw(Piece piece, String sheet) {
    String text = piece.mark() + " on " + sheet;
    Polygon box = piece.outline();
    Optional<Xy> level = level(box, text, EASY);
    if (level.isEmpty()) {
      double width = sketch.paper(Sketch.SMALL + 2 * EASY);
      double height = sketch.paper(TextSize.width(text, Sketch.SMALL) + 2 * EASY);
      Optional<Xy> upright = spots.in(box, width, height);
      if (upright.isPresent()) {
        sketch.labelUp(
            Layers.TEXT, onDrawing(upright.get()), text, Sketch.SMALL, TextAnchor.MIDDLE);
        return;
      }
    }
    Optional<Xy> tight = level.or(() -> level(box, text, TIGHT));
    Xy at = tight.or(() -> level(box, piece.mark(), TIGHT)).orElse(middle(box));
    String words = tight.isPresent() ? text : piece.mark();
    sketch.label(Layers.TEXT, onDrawing(at), words, Sketch.SMALL, TextAnchor.MIDDLE);
  }

  private static Xy middle(Polygon box) {
    Envelope around = box.getEnvelopeInternal();
    return new Xy(around.centre().x, around.centre().y);
  }

  private Optional<Xy> level(Polygon box, String text, double around) {
    double width = sketch.paper(TextSize.width(text, Sketch.SMALL) + 2 * around);
    return spots.in(box, width, sketch.paper(Sketch.SMALL + 2 * around));
  }

  private Xy onDrawing(Xy place) {
    return frame.at(place.x(), place.y());
  }
}
