package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.FacetPlane;
import plycrag.params.FacetParameters;

/** Stands facets on each other: every lower edge on the upper edge of the facet before it. */
final class Profile {
  private final List<FacetParameters> given;

  private Profile(List<FacetParameters> given) {
    this.given = given;
  }

  /**
   * The facets of a chain.
   *
   * @param given from the floor up
   * @param raise height of the lowest edge above the floor, mm
   */
  static List<Facet> of(List<FacetParameters> given, double raise) {
    Profile profile = new Profile(given);
    List<Facet> facets = new ArrayList<>();
    FacetPlane plane = new FacetPlane(given.get(0).angle(), 0, raise);
    for (int at = 0; at < given.size(); at++) {
      facets.add(profile.facet(at, plane));
      double length = given.get(at).length();
      double next = at + 1 < given.size() ? given.get(at + 1).angle() : 0;
      plane = new FacetPlane(next, plane.y(length, 0), plane.z(length, 0));
    }
    return facets;
  }

  private Facet facet(int at, FacetPlane plane) {
    FacetParameters facet = given.get(at);
    return new Facet(
        facet.name(),
        facet.angle(),
        facet.width(),
        facet.length(),
        plane,
        at > 0 ? Optional.of(fold(at)) : Optional.empty(),
        at + 1 < given.size() ? Optional.of(fold(at + 1)) : Optional.empty());
  }

  private Fold fold(int upper) {
    return new Fold(given.get(upper).angle() - given.get(upper - 1).angle());
  }
}
