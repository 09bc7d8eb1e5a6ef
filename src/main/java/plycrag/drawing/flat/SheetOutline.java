package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Layer;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.sheets.LaidPiece;
import plycrag.solve.nest.Placement;
import plycrag.solve.nest.StockSheet;

/**
 * The edges of a laid piece.
 *
 * @param piece its blank on the sheet
 * @param openings the edges of holes in it that are cut out
 * @param front the edges of its front face, once bevelled, that lie within the blank
 */
public record SheetOutline(List<Xy> piece, List<List<Xy>> openings, List<List<Xy>> front) {
  public static SheetOutline of(LaidPiece laid) {
    Polygon blank = laid.piece().blank();
    List<List<Xy>> openings = new ArrayList<>();
    for (int hole = 0; hole < blank.getNumInteriorRing(); hole++) {
      openings.add(vertices(blank.getInteriorRingN(hole), laid.placement()));
    }
    return new SheetOutline(
        vertices(blank.getExteriorRing(), laid.placement()), openings, front(laid));
  }

  private static List<Xy> vertices(LineString ring, Placement placement) {
    List<Xy> points = points(ring, placement);
    return points.subList(0, points.size() - 1);
  }

  private static List<Xy> points(LineString line, Placement placement) {
    List<Xy> points = new ArrayList<>();
    for (Coordinate place : line.getCoordinates()) {
      Coordinate laid = placement.of(place);
      points.add(new Xy(laid.x, laid.y));
    }
    return points;
  }

  private static List<List<Xy>> front(LaidPiece laid) {
    Geometry edge = laid.piece().blank().getBoundary();
    return Shapes.edges(laid.piece().outline()).stream()
        .filter(line -> edge.distance(line.getCentroid()) > Tolerance.TOUCH)
        .map(line -> points(line, laid.placement()))
        .toList();
  }

  /** The whole sheet's edge; what pieces share with it is drawn once. */
  public static List<Xy> whole(StockSheet stock) {
    Xy corner = new Xy(0, 0);
    return List.of(
        corner,
        new Xy(stock.width(), 0),
        new Xy(stock.width(), stock.height()),
        new Xy(0, stock.height()),
        corner);
  }

  /** Draws the edges that are cut. */
  public void drawCut(Sketch sketch, Layer layer) {
    sketch.outline(layer, piece);
    openings.forEach(opening -> sketch.outline(layer, opening));
  }

  /** Draws the edges of the front face. */
  public void drawFront(Sketch sketch) {
    front.forEach(edge -> sketch.path(Layers.DIMENSIONS, edge));
  }
}
