package plycrag.wall;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Trig;
import plycrag.geometry.Vector3;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Kind;

/**
 * How a hinged run moves: its second facet turns about its lower edge, and what stands on that with
 * it.
 *
 * @param hinged the facet that turns
 */
public record Swing(Facet hinged) {

  /** That of a run of a hinged wall, from the floor up; none if nothing of it turns. */
  public static Optional<Swing> of(Wall wall, List<Facet> run) {
    boolean turns = run.size() > 1 && hinged(wall, run.get(1)).isPresent();
    return turns ? Optional.of(new Swing(run.get(1))) : Optional.empty();
  }

  /** The angles a wall is used at, ascending; the one it is drawn at where no others are given. */
  public static List<Double> angles(Wall wall, Facet hinged) {
    return hinged(wall, hinged)
        .map(GivenSupport::hinge)
        .map(GivenSupport.Hinge::angles)
        .filter(angles -> !angles.isEmpty())
        .orElse(List.of(hinged.angle()));
  }

  private static Optional<GivenSupport> hinged(Wall wall, Facet facet) {
    return wall.support(facet).filter(support -> support.kind() == Kind.HINGED);
  }

  /** Where a place in the room that turns with the facet lies at another angle of it, degrees. */
  public Vector3 at(double angle, Vector3 place) {
    FacetPlane plane = hinged.plane();
    Vector3 inRun = plane.floorAxes().fromRoom(place);
    double turn = angle - hinged.angle();
    double out = inRun.y() - plane.out();
    double up = inRun.z() - plane.raise();
    double sin = Trig.sin(turn);
    double cos = Trig.cos(turn);
    return plane
        .floorAxes()
        .toRoom(
            new Vector3(
                inRun.x(),
                plane.out() + out * cos + up * sin,
                plane.raise() + up * cos - out * sin));
  }
}
