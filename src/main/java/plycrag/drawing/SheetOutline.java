package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.layout.LaidSheet;
import plycrag.layout.nest.StockSheet;

/**
 * The edges of a laid sheet, each once.
 *
 * @param piece the piece's blank on the sheet
 * @param openings the edges of holes in it that are cut out
 * @param front the edges of its front face, once bevelled, that lie within the blank
 * @param stock what remains of the sheet's own edge beside it; empty if the piece is the whole
 *     sheet
 */
record SheetOutline(
    List<Xy> piece, List<List<Xy>> openings, List<List<Xy>> front, Optional<List<Xy>> stock) {
  private static final double TOLERANCE = 0.01;

  static SheetOutline of(LaidSheet sheet) {
    Polygon blank = sheet.piece().blank();
    List<List<Xy>> openings = new ArrayList<>();
    for (int hole = 0; hole < blank.getNumInteriorRing(); hole++) {
      openings.add(vertices(blank.getInteriorRingN(hole), sheet));
    }
    return new SheetOutline(
        vertices(blank.getExteriorRing(), sheet),
        openings,
        front(sheet),
        blank.isRectangle() ? rest(sheet) : Optional.of(whole(sheet.stock())));
  }

  private static List<Xy> vertices(LineString ring, LaidSheet sheet) {
    List<Xy> points = points(ring, sheet);
    return points.subList(0, points.size() - 1);
  }

  private static List<Xy> points(LineString line, LaidSheet sheet) {
    List<Xy> points = new ArrayList<>();
    for (Coordinate place : line.getCoordinates()) {
      points.add(
          new Xy(
              Shapes.onGrid(place.x - sheet.stock().placement().originU()),
              Shapes.onGrid(place.y - sheet.stock().placement().originV())));
    }
    return points;
  }

  private static List<List<Xy>> front(LaidSheet sheet) {
    Geometry edge = sheet.piece().blank().getBoundary();
    return Shapes.edges(sheet.piece().outline()).stream()
        .filter(line -> edge.distance(line.getCentroid()) > TOLERANCE)
        .map(line -> points(line, sheet))
        .toList();
  }

  /** The whole sheet's edge; what the piece shares with it is drawn once. */
  private static List<Xy> whole(StockSheet stock) {
    Xy corner = new Xy(0, 0);
    return List.of(
        corner,
        new Xy(stock.width(), 0),
        new Xy(stock.width(), stock.height()),
        new Xy(0, stock.height()),
        corner);
  }

  /** The sheet's edge from the piece's lower right corner round to its upper left one. */
  private static Optional<List<Xy>> rest(LaidSheet sheet) {
    StockSheet stock = sheet.stock();
    Envelope blank = sheet.piece().blank().getEnvelopeInternal();
    double width = blank.getWidth();
    double height = blank.getHeight();
    List<Xy> points = new ArrayList<>();
    if (stock.width() - width > TOLERANCE) {
      points.add(new Xy(width, 0));
      points.add(new Xy(stock.width(), 0));
    }
    boolean narrower = !points.isEmpty();
    boolean lower = stock.height() - height > TOLERANCE;
    if (!narrower && !lower) {
      return Optional.empty();
    }
    if (!narrower) {
      points.add(new Xy(stock.width(), height));
    }
    points.add(new Xy(stock.width(), stock.height()));
    points.add(new Xy(lower ? 0 : width, stock.height()));
    if (lower) {
      points.add(new Xy(0, height));
    }
    return Optional.of(points);
  }
}
