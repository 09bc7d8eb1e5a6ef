package plycrag.read;

import java.util.List;
import plycrag.units.Tape;
import plycrag.wall.GivenWall;
import plycrag.wall.InsertPosition;
import plycrag.wall.MirroredWall;
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
    GivenWall given = parameters.wall();
    Parameters.Making making = parameters.making();
    Wall drawn =
        new Wall(
            given.name(),
            face(parameters, positions),
            parameters.sheeting(),
            parameters.framework(),
            new Wall.Workshop(new Tape(given.unit()), making.nesting(), making.machine()),
            new Wall.Surroundings(
                given.behind(),
                parameters.supports(),
                parameters.room(),
                parameters.site().structure()));
    return given.mirrored() ? MirroredWall.of(drawn) : drawn;
  }

  private static Wall.Face face(Parameters parameters, List<InsertPosition> positions) {
    return new Wall.Face(
        Profile.of(parameters.facets(), parameters.cutouts(), parameters.wall().raise()),
        parameters.wall().foldEdges(),
        parameters.inserts(),
        parameters.zones().stream().map(Zone::of).toList(),
        positions,
        false);
  }
}
