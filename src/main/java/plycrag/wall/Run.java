package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.FloorAxes;

/**
 * Facets above each other, from the floor up, with their planes; where their sides lie is not yet
 * known.
 *
 * @param given the facets
 * @param planes one for each, u beginning at the left of the facet's width
 * @param turn how far it is turned from the run on its left, degrees; 0 for a run without
 */
record Run(List<GivenFacet> given, List<FacetPlane> planes, double turn) {
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
}
