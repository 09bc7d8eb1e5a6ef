package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.document.Xy;
import plycrag.geometry.Shapes;
import plycrag.layout.LaidSheet;
import plycrag.layout.nest.StockSheet;

/**
 * The edges of a laid sheet, each once.
 *
 * @param piece the piece's blank on the sheet
 * @param front the edges of its front face, once bevelled, that lie within the blank
 * @param stock what remains of the sheet's own edge beside it; empty if the piece is the whole
 *     sheet
 */
record SheetOutline(List<Xy> piece, List<List<Xy>> front, Optional<List<Xy>> stock) {
  private static final double TOLERANCE = 0.01;

  static SheetOutline of(LaidSheet sheet) {
    List<Xy> piece = new ArrayList<>();
    Coordinate[] ring = sheet.piece().blank().getExteriorRing().getCoordinates();
    for (int at = 0; at < ring.length - 1; at++) {
      double x = Shapes.onGrid(ring[at].x - sheet.stock().placement().originU());
      double y = Shapes.onGrid(ring[at].y - sheet.stock().placement().originV());
      piece.add(new Xy(x, y));
    }
    return new SheetOutline(piece, front(sheet), rest(sheet));
  }

  private static List<List<Xy>> front(LaidSheet sheet) {
    Envelope front = sheet.piece().box();
    Envelope blank = sheet.piece().blank().getEnvelopeInternal();
    double origin = sheet.stock().placement().originV();
    return Stream.of(front.getMinY(), front.getMaxY())
        .filter(v -> v - blank.getMinY() > TOLERANCE && blank.getMaxY() - v > TOLERANCE)
        .map(v -> Shapes.onGrid(v - origin))
        .map(y -> List.of(new Xy(0, y), new Xy(blank.getWidth(), y)))
        .toList();
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
