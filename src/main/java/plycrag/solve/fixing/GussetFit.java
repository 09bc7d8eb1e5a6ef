package plycrag.solve.fixing;

import java.util.List;
import java.util.Map;
import plycrag.geometry.Solid;

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

  /** Copies the screws. */
  public GussetFit {
    screws = List.copyOf(screws);
  }

  /** Whether two would lie in each other's way, or their screws might meet. */
  public boolean meets(GussetFit other) {
    return taken.overlapsByMoreThan(-APART, other.taken);
  }
}
