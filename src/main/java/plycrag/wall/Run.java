package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Shapes;
import plycrag.wall.Corner.Part;

/**
 * Facets above each other, from the floor up, with their planes; where their sides lie is not yet
 * known.
 *
 * @param given the facets
 * @param planes one for each, u beginning at the left of the facet's width
 * @param turn how far it is turned from the run on its left, degrees; 0 for a run without
 */
record Run(List<GivenFacet> given, List<FacetPlane> planes, double turn) {
  /** A facet that goes on by less above a corner ends with it, mm (common practice, no source). */
  private static final double SHORT = 300;

  Run {
    given = List.copyOf(given);
    planes = List.copyOf(planes);
  }

  /** A run that stands somewhere. */
  static Run of(List<GivenFacet> given, FloorAxes axes, double raise, double turn) {
    List<FacetPlane> planes = new ArrayList<>();
    double left = 0;
    double out = 0;
    double height = raise;
    for (GivenFacet facet : given) {
      left += planes.isEmpty() ? 0 : facet.shift();
      FacetPlane plane = new FacetPlane(facet.angle(), left, out, height, axes);
      planes.add(plane);
      out = plane.y(facet.length(), 0);
      height = plane.z(facet.length(), 0);
    }
    return new Run(given, planes, turn);
  }

  /** How many facets it has. */
  int size() {
    return given.size();
  }

  /** Where a run on its right begins, with its lowest corner on this one's. */
  FloorAxes nextStand(double turnOfNext) {
    return planes.get(0).floorAxes().next(given.get(0).width(), 0, turnOfNext);
  }

  /** A facet as it would be without walls beside it, in (u, v) of its plane. */
  Polygon wished(int level) {
    GivenFacet facet = given.get(level);
    return facet
        .outline()
        .map(corners -> Shapes.polygon(FacetShapes.coordinates(corners)))
        .orElseGet(() -> Shapes.rectangle(0, 0, facet.width(), facet.length()));
  }

  /**
   * How a side goes on where the wall beside it has ended: straight up. If the facet itself ends
   * soon it goes on along the corner, in one cut, since nobody steps an edge for a hand's breadth.
   *
   * @param corner the last part of the corner
   * @param from the number of the facet that it lies on
   * @param level the number of that facet or of one above it
   */
  Part goesOn(Part corner, int from, int level) {
    Coordinate end = corner.high();
    double rest = given.get(from).length() - end.y;
    double rise = end.y - corner.low().y;
    double slope = rest < SHORT && rise > rest ? (end.x - corner.low().x) / rise : 0;
    Coordinate top = new Coordinate(end.x + slope * rest, end.y + rest);
    if (level == from) {
      return new Part(end, top);
    }
    double u = top.x + planes.get(from).left() - planes.get(level).left();
    return new Part(new Coordinate(u, 0), new Coordinate(u, given.get(level).length()));
  }
}
