package plycrag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import plycrag.geometry.Surface.Triangle;

/** Fills areas with triangles between their own corners, by clipping ears. */
public final class Triangulation {
  private Triangulation() {}

  /** The triangles of an area, counter-clockwise; together they are it. */
  public static List<Polygon> of(Polygon area) {
    return of(area, 0).stream()
        .map(one -> Stream.of(one.a(), one.b(), one.c()))
        .map(corners -> corners.map(at -> new Coordinate(at.x(), at.y())).toList())
        .map(Shapes::ring)
        .toList();
  }

  /** The triangles of an area at a depth, counter-clockwise in (u, v). */
  static List<Triangle> of(Polygon area, double w) {
    Geometry filled = PolygonTriangulator.triangulate(area);
    List<Triangle> triangles = new ArrayList<>();
    for (int at = 0; at < filled.getNumGeometries(); at++) {
      triangles.add(triangle(filled.getGeometryN(at).getCoordinates(), w));
    }
    return triangles;
  }

  private static Triangle triangle(Coordinate[] ring, double w) {
    boolean turned = Orientation.index(ring[0], ring[1], ring[2]) == Orientation.CLOCKWISE;
    return new Triangle(
        place(ring[0], w), place(ring[turned ? 2 : 1], w), place(ring[turned ? 1 : 2], w));
  }

  private static Vector3 place(Coordinate at, double w) {
    return new Vector3(at.x, at.y, w);
  }
}
