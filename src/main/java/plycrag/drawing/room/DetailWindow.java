package plycrag.drawing.room;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.Layer;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FacetFrame;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.LineWork;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;

/**
 * What a detail shows of a section: everything within a box. Where the box cuts a part no edge is
 * drawn, since the part goes on.
 *
 * @param box on the drawing, mm
 * @param sketch where it is drawn
 */
record DetailWindow(Envelope box, Sketch sketch) {
  /** Around a mark on paper, mm. */
  private static final double CLEAR = 0.5;

  /** So much around a place, at the scale that fits a page. */
  static DetailWindow around(Xy place, double reach) {
    Envelope box = new Envelope(new Coordinate(place.x(), place.y()));
    box.expandBy(reach);
    return new DetailWindow(box, new Sketch(Scale.fitting(box.getWidth(), box.getHeight())));
  }

  Extent extent() {
    return new Extent(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  boolean isSeen(List<Xy> corners) {
    return corners.stream().anyMatch(corner -> box.contains(corner.x(), corner.y()));
  }

  /** The edges of a part. */
  void draw(Layer layer, List<Xy> corners) {
    for (Polygon part : shown(corners)) {
      for (LineString edge : Shapes.edges(part)) {
        if (!isCut(edge)) {
          List<Xy> ends = Sketch.points(edge, whole());
          sketch.line(layer, ends.get(0), ends.get(1));
        }
      }
    }
  }

  /** Timber cut across: tinted, crossed by two thin diagonals, with its mark if there is room. */
  void drawTimber(List<Xy> corners, String mark) {
    for (Polygon part : shown(corners)) {
      sketch.area(Layers.TINT, Sketch.vertices(part.getExteriorRing(), whole()), Fill.TIMBER);
    }
    draw(Layers.PARTS, corners);
    Coordinate middle = polygon(corners).getCentroid().getCoordinate();
    Envelope words = new Envelope();
    if (box.contains(middle)) {
      Xy at = new Xy(middle.x, middle.y);
      sketch.label(Layers.TEXT, at, mark, Sketch.SMALL, TextAnchor.MIDDLE);
      words.expandToInclude(middle);
      words.expandBy(
          sketch.paper(TextSize.width(mark, Sketch.SMALL) / 2 + CLEAR),
          sketch.paper(Sketch.SMALL / 2 + CLEAR));
    }
    if (corners.size() == 4) {
      drawDiagonal(corners.get(0), corners.get(2), words);
      drawDiagonal(corners.get(1), corners.get(3), words);
    }
  }

  /** What of a diagonal lies in the window and not under words. */
  private void drawDiagonal(Xy from, Xy to, Envelope words) {
    Geometry line = Shapes.line(from.x(), from.y(), to.x(), to.y());
    Geometry seen = Shapes.shared(line, Shapes.rectangle(box));
    Geometry clear = words.isNull() ? seen : Shapes.without(seen, Shapes.rectangle(words));
    LineWork.lines(clear, sketch).forEach(one -> LineWork.draw(sketch, Layers.CONTEXT, one));
  }

  private List<Polygon> shown(List<Xy> corners) {
    Geometry shared = Shapes.shared(polygon(corners), Shapes.rectangle(box));
    return Shapes.areas(shared);
  }

  private static Polygon polygon(List<Xy> corners) {
    return Shapes.polygon(
        corners.stream().map(corner -> new Coordinate(corner.x(), corner.y())).toList());
  }

  private static FacetFrame whole() {
    return new FacetFrame(false, 0);
  }

  private boolean isCut(LineString edge) {
    Envelope line = edge.getEnvelopeInternal();
    return (line.getWidth() < Tolerance.TOUCH
            && (line.getMinX() - box.getMinX() < Tolerance.TOUCH
                || box.getMaxX() - line.getMaxX() < Tolerance.TOUCH))
        || (line.getHeight() < Tolerance.TOUCH
            && (line.getMinY() - box.getMinY() < Tolerance.TOUCH
                || box.getMaxY() - line.getMaxY() < Tolerance.TOUCH));
  }
}
