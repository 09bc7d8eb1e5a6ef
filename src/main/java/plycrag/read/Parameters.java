package plycrag.read;

import java.util.List;
import java.util.Optional;
import plycrag.wall.Clearances;
import plycrag.wall.Frame;
import plycrag.wall.GivenCutout;
import plycrag.wall.GivenFacet;
import plycrag.wall.GivenWall;
import plycrag.wall.GivenZone;
import plycrag.wall.Inserts;
import plycrag.wall.JointFasteners;
import plycrag.wall.Output;
import plycrag.wall.Screws;
import plycrag.wall.Sheet;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.TimberStock;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.Room;

/**
 * Everything a parameter file says, validated; one small record for each stage. Only {@code read}
 * and {@code app} see it whole.
 */
public record Parameters(
    GivenWall wall,
    List<GivenFacet> facets,
    List<GivenCutout> cutouts,
    Optional<GivenSupport> support,
    Room room,
    Sheet sheet,
    SheetCuttingRules nesting,
    Frame frame,
    JointFasteners joints,
    TimberStock stock,
    MaterialWishes buying,
    Inserts inserts,
    List<GivenZone> zones,
    Screws screws,
    Clearances clearance,
    Machine machine,
    Output output) {

  /** Copies the lists. */
  public Parameters {
    cutouts = List.copyOf(cutouts);
    facets = List.copyOf(facets);
    zones = List.copyOf(zones);
  }
}
