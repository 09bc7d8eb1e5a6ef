package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Sketch;
import plycrag.geometry.FreeSides;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidSheet;

/**
 * The edges of what comes from a sheet, drawn as cuts or only to be read.
 *
 * <p>A router cuts lines that lie within the sheet alone. Along the sheet's own edge a profile
 * would take the kerf off a neighbour, or run into clamps; there the sheet's edge is the piece's,
 * and what remains of its outline is an open line with the piece on its left.
 */
final class CutLines {
  private final Sketch sketch;
  private final OperationLayers layers;
  private final LaidSheet sheet;

  CutLines(Sketch sketch, OperationLayers layers, LaidSheet sheet) {
    this.sketch = sketch;
    this.layers = layers;
    this.sheet = sheet;
  }

  /** Draws an area that a router cuts out. */
  void cut(Polygon kept) {
    FreeSides.of(kept, sheet.area()).forEach(this::cut);
    for (Polygon opening : Shapes.openings(kept)) {
      sketch.outline(layers.opening(), vertices(opening));
    }
  }

  private void cut(FreeSides.Chain chain) {
    List<Xy> way = chain.points().stream().map(CutLines::place).toList();
    if (chain.closed()) {
      sketch.outline(layers.outline(), way);
    } else {
      sketch.path(layers.edge(), way);
    }
  }

  /** Draws an area that something else cuts out, or another time. */
  void show(Polygon kept) {
    sketch.outline(Layers.NOT_CUT, vertices(kept));
    for (Polygon opening : Shapes.openings(kept)) {
      sketch.outline(Layers.NOT_CUT, vertices(opening));
    }
  }

  private static List<Xy> vertices(Polygon area) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    List<Xy> vertices = new ArrayList<>();
    for (int at = 1; at < ring.length; at++) {
      vertices.add(place(ring[at]));
    }
    return vertices;
  }

  private static Xy place(Coordinate at) {
    return new Xy(at.x, at.y);
  }
}
