package plycrag.wall;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;

/** Makes polygons of the shapes that a parameter file tells. */
final class FacetShapes {
  private FacetShapes() {}

  /** The polygon of a shape, in (u, v). */
  static Polygon polygon(FacetShape shape) {
    if (shape instanceof FacetShape.Rectangle box) {
      return Shapes.rectangle(
          box.left(), box.low(), box.left() + box.width(), box.low() + box.height());
    }
    if (shape instanceof FacetShape.Circle circle) {
      return Shapes.circle(circle.centre().across(), circle.centre().up(), circle.diameter());
    }
    return Shapes.polygon(coordinates(((FacetShape.Outline) shape).corners()));
  }

  /** Corners in (u, v). */
  static List<Coordinate> coordinates(List<FacetPoint> corners) {
    return corners.stream().map(corner -> new Coordinate(corner.across(), corner.up())).toList();
  }
}
