package plycrag.solve.fixing;

import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.geom.Coordinate;
import plycrag.geometry.Rod;
import plycrag.geometry.Solid;
import plycrag.geometry.Vector3;

/**
 * A rectangle of plywood over members that lie flush, with its screws.
 *
 * <p>Its places are read from its lower left corner as one looks at it.
 *
 * @param parallelTo the mark of the member along and across which its sides run
 * @param size its lower side, and the one that rises, mm
 * @param screws member by member
 * @param diameter of the screws, mm
 * @param screwLength of the screws, mm
 * @param timbers the corners of the members' faces under it and around it, by their marks
 * @param body in the room
 * @param taken the same with the timber that its screws go into
 */
public record GussetFit(
    String parallelTo,
    FacePlace size,
    List<GussetScrew> screws,
    double diameter,
    double screwLength,
    Map<String, List<FacePlace>> timbers,
    Solid body,
    Solid taken) {
  /** Two gussets stay this far apart, mm. */
  private static final double APART = 1;

  /**
   * Screws that cross in timber stay apart as rows of them do (EN 1995-1-1 Table 8.2), diameters.
   */
  private static final double ROWS = 3;

  /** Copies the screws. */
  public GussetFit {
    screws = List.copyOf(screws);
  }

  /** Its screws from under their heads, in their order. */
  public List<Rod> rods() {
    Vector3 corner = body.near().get(0);
    Vector3 along = body.near().get(1).minus(corner).unit();
    Vector3 across = body.near().get(3).minus(corner).unit();
    Vector3 through = body.far().get(0).minus(corner);
    Vector3 inward = through.unit().times(-1);
    return screws.stream()
        .map(GussetScrew::spot)
        .map(spot -> along.times(spot.along()).plus(across.times(spot.across())))
        .map(spot -> new Rod(corner.plus(through).plus(spot), inward, screwLength, diameter))
        .toList();
  }

  /** Whether two would lie in each other's way, or their screws come too near each other. */
  public boolean meets(GussetFit other) {
    return taken.overlapsByMoreThan(-APART, other.taken)
        && (body.overlapsByMoreThan(-APART, other.body) || comesNear(other));
  }

  private boolean comesNear(GussetFit other) {
    double apart = ROWS * Math.max(diameter, other.diameter);
    return rods().stream()
        .anyMatch(one -> other.rods().stream().anyMatch(another -> apart(one, another) < apart));
  }

  /** How far the axes of two screws are apart where they come nearest, mm. */
  private static double apart(Rod one, Rod other) {
    return CGAlgorithms3D.distanceSegmentSegment(
        at(one.from()), at(one.end()), at(other.from()), at(other.end()));
  }

  private static Coordinate at(Vector3 place) {
    return new Coordinate(place.x(), place.y(), place.z());
  }
}
