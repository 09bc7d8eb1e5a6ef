package plycrag.read;

import java.util.List;
import plycrag.catalog.FlatSteel;
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
import plycrag.wall.Wall.Framework;
import plycrag.wall.Wall.Sheeting;
import plycrag.wall.buying.MaterialWishes;
import plycrag.wall.buying.TimberStock;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.room.GivenStructure;
import plycrag.wall.room.Room;
import plycrag.wall.room.Supports;

/**
 * Everything a parameter file says, validated; one small record for each stage. Only {@code read}
 * and {@code app} see it whole.
 *
 * @param wall what holds for all of it
 * @param face what is climbed on
 * @param sheeting what its sheets are and how they are fixed
 * @param framework the timber behind them
 * @param making what it is made with and what is told of it
 * @param site where it stands
 */
public record Parameters(
    GivenWall wall,
    GivenFace face,
    Sheeting sheeting,
    Framework framework,
    Making making,
    Site site) {

  /**
   * What is climbed on.
   *
   * @param facets in the order of the file
   * @param cutouts likewise
   * @param inserts the pattern and the inserts
   * @param zones parts of facets with patterns of their own
   */
  public record GivenFace(
      List<GivenFacet> facets, List<GivenCutout> cutouts, Inserts inserts, List<GivenZone> zones) {

    /** Copies the lists. */
    public GivenFace {
      facets = List.copyOf(facets);
      cutouts = List.copyOf(cutouts);
      zones = List.copyOf(zones);
    }
  }

  /**
   * What a wall is made with and what is told of it.
   *
   * @param nesting how pieces are laid on sheets and cut
   * @param machine what makes the sheets
   * @param buying what is asked of what is bought
   * @param output how it is written
   */
  public record Making(
      SheetCuttingRules nesting, Machine machine, MaterialWishes buying, Output output) {}

  /**
   * Where a wall stands.
   *
   * @param supports what holds it up
   * @param room what is around it
   * @param structure by what its strength is checked
   */
  public record Site(Supports supports, Room room, GivenStructure structure) {}

  /** The facets, in the order of the file. */
  public List<GivenFacet> facets() {
    return face.facets();
  }

  /** The cutouts, in the order of the file. */
  public List<GivenCutout> cutouts() {
    return face.cutouts();
  }

  /** The same with a user's own brackets, straps and hinges. */
  public Parameters preferring(List<FlatSteel> own) {
    Framework steel =
        new Framework(framework.frame(), framework.joints().preferring(own), framework.stock());
    return new Parameters(wall, face, sheeting, steel, making, site);
  }

  /** What holds it up. */
  public Supports supports() {
    return site.supports();
  }

  /** What is around it. */
  public Room room() {
    return site.room();
  }

  /** The stock sheets and how they are laid. */
  public Sheet sheet() {
    return sheeting.sheet();
  }

  /** The framing behind them. */
  public Frame frame() {
    return framework.frame();
  }

  /** What holds the framing together. */
  public JointFasteners joints() {
    return framework.joints();
  }

  /** The timber that the merchant sells. */
  public TimberStock stock() {
    return framework.stock();
  }

  /** What is asked of what is bought. */
  public MaterialWishes buying() {
    return making.buying();
  }

  /** The pattern and the inserts. */
  public Inserts inserts() {
    return face.inserts();
  }

  /** Parts of facets with patterns of their own. */
  public List<GivenZone> zones() {
    return face.zones();
  }

  /** What holds the sheets to the frame. */
  public Screws screws() {
    return sheeting.screws();
  }

  /** The least distances. */
  public Clearances clearance() {
    return sheeting.clearance();
  }

  /** What makes the sheets. */
  public Machine machine() {
    return making.machine();
  }

  /** How it is written. */
  public Output output() {
    return making.output();
  }
}
