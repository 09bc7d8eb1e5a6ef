package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.layout.skin.Piece;
import plycrag.solve.nest.Placement;

/**
 * A piece on its sheet.
 *
 * @param piece what is cut
 * @param facet the facet that it belongs to, by name
 * @param placement where it lies
 */
public record LaidPiece(Piece piece, String facet, Placement placement) {

  /** The smallest box around its blank on the sheet, mm. */
  public Envelope box() {
    return placement.of(piece.blank()).getEnvelopeInternal();
  }

  /** What is cut, where it lies on the sheet; its openings are open. */
  public Polygon kept() {
    Geometry kept = placement.of(piece.blank());
    for (Polygon opening : Shapes.openings(piece.blank())) {
      kept = Shapes.without(kept, placement.of(opening));
    }
    return Shapes.largest(kept);
  }

  /** Where its blank, the openings in it and its two faces lie on the sheet. */
  List<Polygon> edges() {
    List<Polygon> edges = new ArrayList<>();
    for (Polygon area : List.of(piece.blank(), piece.outline(), piece.back())) {
      edges.add(placement.of(area));
    }
    Shapes.openings(piece.blank()).forEach(opening -> edges.add(placement.of(opening)));
    return edges;
  }
}
