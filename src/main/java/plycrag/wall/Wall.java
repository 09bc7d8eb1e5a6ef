package plycrag.wall;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.Trig;
import plycrag.units.Tape;
import plycrag.wall.GivenWall.Behind;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.buying.TimberStock;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.Room;

/**
 * What is to be built.
 *
 * @param name printed everywhere
 * @param tape what it is set out with
 * @param facets run by run from left to right, each from the floor up
 * @param foldEdges how what meets at a fold is cut
 * @param behind what reaches the back of the finished wall
 * @param support what holds it up, if it is told
 * @param room what is around it
 * @param sheet the stock sheets and how they are laid
 * @param nesting how pieces are laid on them and cut
 * @param frame the framing behind them
 * @param joints what holds the framing together
 * @param stock the timber that the merchant sells
 * @param inserts the pattern and the inserts
 * @param zones parts of facets with patterns of their own
 * @param positions where inserts are, for the pattern file
 * @param screws what holds the sheets to the frame
 * @param clearance the least distances
 * @param machine what makes the sheets
 */
public record Wall(
    String name,
    Tape tape,
    List<Facet> facets,
    FoldEdges foldEdges,
    Behind behind,
    Optional<GivenSupport> support,
    Room room,
    Sheet sheet,
    SheetCuttingRules nesting,
    Frame frame,
    JointFasteners joints,
    TimberStock stock,
    Inserts inserts,
    List<Zone> zones,
    List<InsertPosition> positions,
    Screws screws,
    Clearances clearance,
    Machine machine) {

  /** In thicknesses of the sheet (common practice, no source). */
  private static final double OVERHANG = 2;

  /** Copies the lists. */
  public Wall {
    facets = List.copyOf(facets);
    zones = List.copyOf(zones);
    positions = List.copyOf(positions);
  }

  /**
   * How wide a gap a fold leaves in the climbing face, mm: that of sheets cut square which would
   * meet behind it.
   */
  public double foldGap(Fold fold) {
    boolean gaps = foldEdges == FoldEdges.SQUARE && fold.bevel() < 0;
    return gaps ? 2 * sheet.thickness() * Trig.sin(-fold.bevel()) : 0;
  }

  /**
   * How far an edge of a facet may stand out beyond the timber that backs it, mm. Where sheets are
   * cut square at a fold, timber stops short of it.
   */
  public double overhang(Facet facet) {
    return !facet.folds().isEmpty() && foldEdges == FoldEdges.SQUARE
        ? OVERHANG * sheet.thickness()
        : 0;
  }

  /**
   * How far an edge at a seam may go on beyond its timber, which is cut square, to an opening that
   * is no rectangle, mm: as far as a sheet is thick it does not bend (common practice, no source).
   */
  public double rimOverhang() {
    return sheet.thickness();
  }

  /** How high the rails are that the frame stands on, mm; 0 where it stands on the floor. */
  public double base() {
    return support.filter(GivenSupport::hasPosts).isPresent() ? frame.depth() : 0;
  }

  /** The zones of a facet, in their order. */
  public List<Zone> zones(Facet facet) {
    return zones.stream().filter(zone -> zone.facet().equals(facet.name())).toList();
  }

  /** The zones of a facet whose pattern tells the places of something, in their order. */
  public List<Zone> zones(Facet facet, Points points) {
    return zones(facet).stream().filter(zone -> zone.points() == points).toList();
  }

  /** Whether all inserts stand in columns and rows. */
  public boolean hasLinesOnly() {
    return Stream.concat(
            Stream.of(inserts.pattern()),
            zones.stream().filter(zone -> zone.points() == Points.INSERTS).map(Zone::pattern))
        .allMatch(pattern -> pattern.hasLines() || pattern.kind() == Kind.NONE);
  }
}
