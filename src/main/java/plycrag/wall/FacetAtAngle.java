package plycrag.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.geometry.Vector3;

/**
 * A facet at one of the angles that a hinged wall is used at; any other as it stands.
 *
 * @param facet the facet
 * @param swing what turns it, if something does
 * @param angle of the facet that is hinged, degrees
 */
public record FacetAtAngle(Facet facet, Optional<Swing> swing, double angle) {

  /**
   * The facets of a run at an angle.
   *
   * @param run from the floor up
   * @param angle of the one that is hinged, degrees; without meaning where none is
   */
  public static List<FacetAtAngle> of(Wall wall, List<Facet> run, double angle) {
    Optional<Swing> swing = Swing.of(wall, run);
    List<FacetAtAngle> postures = new ArrayList<>();
    for (int at = 0; at < run.size(); at++) {
      postures.add(new FacetAtAngle(run.get(at), at == 0 ? Optional.empty() : swing, angle));
    }
    return postures;
  }

  /** A place of the facet, (u, v, w), in the room. */
  public Vector3 at(Vector3 onFacet) {
    Vector3 place = facet.plane().toRoom(onFacet);
    return swing.map(one -> one.at(angle, place)).orElse(place);
  }
}
