package plycrag.layout.support;

import java.util.List;
import java.util.Optional;
import plycrag.geometry.FloorAxes;
import plycrag.layout.frame.Joint;
import plycrag.solve.support.Unheld;
import plycrag.wall.room.GivenSupport;

/**
 * What holds facets that stand on each other and are held alike: a whole run, or a part of it.
 *
 * @param run which run of the wall it holds, from the left, from 0
 * @param facets their names, from the floor up
 * @param asked how they are to be held
 * @param axes of the run
 * @param buildingFace of a building's wall that holds them, y of the run, mm
 * @param members station by station from the left
 * @param joints between them, and with the frame
 * @param anchors in the building, from the left
 * @param tethers of a hinged wall
 * @param unheld the facets whose upper edge this kind of support does not hold, and why
 * @param unmet facets without timber where the support ends on them: beside a point, or above an
 *     edge that slants
 * @param sways whether what is to keep it from swaying along the wall has no room
 * @param widestBay the greatest distance between two neighbouring supports, mm
 */
public record SupportPart(
    int run,
    List<String> facets,
    GivenSupport asked,
    FloorAxes axes,
    Optional<Double> buildingFace,
    List<PlacedMember> members,
    List<Joint> joints,
    List<Anchor> anchors,
    List<Tether> tethers,
    List<Unheld> unheld,
    List<String> unmet,
    boolean sways,
    double widestBay) {

  /** Copies the lists. */
  public SupportPart {
    facets = List.copyOf(facets);
    members = List.copyOf(members);
    joints = List.copyOf(joints);
    anchors = List.copyOf(anchors);
    tethers = List.copyOf(tethers);
    unheld = List.copyOf(unheld);
    unmet = List.copyOf(unmet);
  }
}
