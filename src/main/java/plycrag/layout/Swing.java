package plycrag.layout;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.FacetPlane;
import plycrag.geometry.Place;
import plycrag.geometry.Trig;
import plycrag.params.SupportParameters;
import plycrag.params.SupportParameters.Kind;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * How a hinged run moves: its second facet turns about its lower edge, and what stands on that with
 * it.
 *
 * @param hinged the facet that turns
 */
public record Swing(Facet hinged) {

  /** That of a run of a hinged wall, from the floor up; none if nothing of it turns. */
  public static Optional<Swing> of(Wall wall, List<Facet> run) {
    boolean turns =
        wall.support().filter(support -> support.kind() == Kind.HINGED).isPresent()
            && run.size() > 1;
    return turns ? Optional.of(new Swing(run.get(1))) : Optional.empty();
  }

  /** The angles a wall is used at, ascending; the one it is drawn at where no others are given. */
  public static List<Double> angles(Wall wall, Facet hinged) {
    return wall.support()
        .map(SupportParameters::hinge)
        .map(SupportParameters.Hinge::angles)
        .filter(angles -> !angles.isEmpty())
        .orElse(List.of(hinged.angle()));
  }

  /** Where a place in the room that turns with the facet lies at another angle of it, degrees. */
  public Place at(double angle, Place place) {
    FacetPlane plane = hinged.plane();
    Place inRun = plane.stand().fromRoom(place);
    double turn = angle - hinged.angle();
    double out = inRun.y() - plane.out();
    double up = inRun.z() - plane.raise();
    double sin = Trig.sin(turn);
    double cos = Trig.cos(turn);
    return plane
        .stand()
        .toRoom(
            new Place(
                inRun.x(),
                plane.out() + out * cos + up * sin,
                plane.raise() + up * cos - out * sin));
  }
}
