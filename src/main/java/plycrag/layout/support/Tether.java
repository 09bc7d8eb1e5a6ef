package plycrag.layout.support;

import java.util.List;
import plycrag.geometry.Vector3;
import plycrag.wall.Facet;
import plycrag.wall.FacetAtAngle;
import plycrag.wall.Wall;

/**
 * A strut, strap, chain or rope that holds a hinged facet at its angle, or keeps it from lifting.
 *
 * @param mark {@code TE1}, … ; the one that works by itself beside it is {@code TE1b}, what keeps
 *     the facet from lifting there {@code LK1}
 * @param task what it is for
 * @param u where it is held on the facet, mm
 * @param v likewise, up the slope
 * @param anchor where it is held behind the wall, in the room
 */
public record Tether(String mark, Task task, double u, double v, Vector3 anchor) {

  /** What one does. */
  public enum Task {
    /** It holds the facet. */
    HOLDS("holds the wall"),
    /** It does so by itself should the other fail. */
    BACKUP("backup, works by itself"),
    /** It is stiff where the others hang slack, should somebody push the facet up. */
    LOCK("keeps it from lifting");

    private final String words;

    Task(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * Where it holds the uppermost facet, on the back of its stud, in the room.
   *
   * @param wall that it holds
   * @param run the facets of its only run, from the floor up
   * @param angle of the facet that is hinged, degrees
   */
  public Vector3 held(Wall wall, List<Facet> run, double angle) {
    List<FacetAtAngle> turnedFacets = FacetAtAngle.of(wall, run, angle);
    return turnedFacets.get(turnedFacets.size() - 1).at(new Vector3(u, v, wall.frameBack()));
  }
}
