package plycrag.layout.skin;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Unturned;
import plycrag.wall.Cutout;
import plycrag.wall.Facet;

/**
 * Where openings reach a facet's sides. What lies behind the face ends before or beyond them: such
 * an opening goes on square through what lies beyond, so that no strip is left across it.
 */
public final class OpeningsAtSides {
  private final Facet facet;
  private final IntToDoubleFunction outward;

  /**
   * @param facet the facet
   * @param outward how far something goes beyond each side, mm
   */
  public OpeningsAtSides(Facet facet, IntToDoubleFunction outward) {
    this.facet = facet;
    this.outward = outward;
  }

  /** The facet with its sides moved, without its openings; all of it if nothing is left. */
  Polygon opened() {
    return opened(Unturned.moved(facet.boundary(), outward).area());
  }

  /** The same of an area that goes as far beyond the facet. */
  public Polygon opened(Polygon area) {
    Geometry rest = area;
    for (Cutout cutout : facet.cutouts()) {
      rest = Shapes.without(rest, Shapes.together(parts(cutout).toList()));
    }
    return facet.cutouts().isEmpty() || Shapes.areas(rest).isEmpty() ? area : Shapes.largest(rest);
  }

  private Stream<Polygon> parts(Cutout cutout) {
    return Stream.concat(Stream.of(cutout.shape()), beyond(cutout));
  }

  private Stream<Polygon> beyond(Cutout cutout) {
    List<LineString> sides = Shapes.outerEdges(facet.boundary());
    return Stream.iterate(0, side -> side < sides.size(), side -> side + 1)
        .filter(side -> outward.applyAsDouble(side) > Tolerance.TOUCH)
        .flatMap(
            side -> {
              Geometry met = Shapes.shared(sides.get(side), cutout.shape());
              return Stream.iterate(0, part -> part < met.getNumGeometries(), part -> part + 1)
                  .map(met::getGeometryN)
                  .filter(part -> part.getLength() > Tolerance.TOUCH)
                  .map(part -> swept(part, sides.get(side), outward.applyAsDouble(side)));
            });
  }

  /** What a stretch of a side passes over when it moves outward, to the right of the side. */
  private static Polygon swept(Geometry stretch, LineString side, double by) {
    Coordinate[] ends = stretch.getCoordinates();
    Coordinate from = ends[0];
    Coordinate to = ends[ends.length - 1];
    Coordinate start = side.getCoordinateN(0);
    Coordinate end = side.getCoordinateN(1);
    double u = (end.y - start.y) / side.getLength() * by;
    double v = (start.x - end.x) / side.getLength() * by;
    return Shapes.polygon(
        List.of(
            from, new Coordinate(from.x + u, from.y + v), new Coordinate(to.x + u, to.y + v), to));
  }
}
