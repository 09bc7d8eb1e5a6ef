package plycrag.drawing.pen;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import plycrag.document.Layer;
import plycrag.document.Xy;

/** Draws geometries that are made of lines. */
public final class LineWork {
  /** Shorter pieces of a line come of rounding, mm on paper. */
  private static final double CRUMB = 0.2;

  private LineWork() {}

  /** The lines of what is seen of a body, crumbs of rounding left out. */
  public static List<LineString> lines(Geometry seen, Sketch sketch) {
    List<LineString> lines = new ArrayList<>();
    for (int part = 0; part < seen.getNumGeometries(); part++) {
      boolean isLong = seen.getGeometryN(part).getLength() > sketch.paper(CRUMB);
      if (seen.getGeometryN(part) instanceof LineString line && isLong) {
        lines.add(line);
      }
    }
    return lines;
  }

  /** Draws a line, each of its stretches by itself. */
  public static void draw(Sketch sketch, Layer layer, LineString line) {
    Coordinate[] points = line.getCoordinates();
    for (int next = 1; next < points.length; next++) {
      sketch.line(layer, at(points[next - 1]), at(points[next]));
    }
  }

  private static Xy at(Coordinate place) {
    return new Xy(place.x, place.y);
  }
}
