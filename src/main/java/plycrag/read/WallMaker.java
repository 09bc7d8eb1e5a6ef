package plycrag.read;

import java.util.List;
import plycrag.units.Tape;
import plycrag.wall.InsertPosition;
import plycrag.wall.Profile;
import plycrag.wall.Wall;
import plycrag.wall.Zone;

/** Makes the wall that a parameter file describes. */
public final class WallMaker {
  private WallMaker() {}

  /**
   * The wall of a file.
   *
   * @param positions that the list of positions tells
   */
  public static Wall of(Parameters parameters, List<InsertPosition> positions) {
    return new Wall(
        parameters.wall().name(),
        new Tape(parameters.wall().unit()),
        Profile.of(parameters.facets(), parameters.cutouts(), parameters.wall().raise()),
        parameters.wall().foldEdges(),
        parameters.wall().behind(),
        parameters.support(),
        parameters.room(),
        parameters.sheet(),
        parameters.nesting(),
        parameters.frame(),
        parameters.joints(),
        parameters.stock(),
        parameters.inserts(),
        parameters.zones().stream().map(Zone::of).toList(),
        positions,
        parameters.screws(),
        parameters.clearance(),
        parameters.machine());
  }
}
