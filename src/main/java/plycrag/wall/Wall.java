package plycrag.wall;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plycrag.geometry.FloorAxes;
import plycrag.geometry.Trig;
import plycrag.units.Tape;
import plycrag.wall.GivenWall.Behind;
import plycrag.wall.GivenWall.FoldEdges;
import plycrag.wall.GivenZone.Points;
import plycrag.wall.Pattern.Kind;
import plycrag.wall.buying.TimberStock;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.room.GivenStructure;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.Room;
import plycrag.wall.room.RoomPlane;
import plycrag.wall.room.Supports;

/**
 * What is to be built.
 *
 * @param name printed everywhere
 * @param face what is climbed on
 * @param sheeting what its sheets are and how they are fixed
 * @param framework the timber behind them
 * @param workshop what it is made with
 * @param surroundings where it stands
 */
public record Wall(
    String name,
    Face face,
    Sheeting sheeting,
    Framework framework,
    Workshop workshop,
    Surroundings surroundings) {

  /** In thicknesses of the sheet (common practice, no source). */
  private static final double OVERHANG = 2;

  /**
   * What is climbed on.
   *
   * @param facets run by run from left to right, each from the floor up
   * @param foldEdges how what meets at a fold is cut
   * @param inserts the pattern and the inserts
   * @param zones parts of facets with patterns of their own
   * @param positions where inserts are, for the pattern file
   * @param mirrored whether it is the image of what was told: what begins on the left there begins
   *     on the right
   */
  public record Face(
      List<Facet> facets,
      FoldEdges foldEdges,
      Inserts inserts,
      List<Zone> zones,
      List<InsertPosition> positions,
      boolean mirrored) {

    /** Copies the lists. */
    public Face {
      facets = List.copyOf(facets);
      zones = List.copyOf(zones);
      positions = List.copyOf(positions);
    }
  }

  /**
   * What the sheets are and how they are fixed.
   *
   * @param sheet the stock sheets and how they are laid
   * @param screws what holds them to the frame
   * @param clearance the least distances
   */
  public record Sheeting(Sheet sheet, Screws screws, Clearances clearance) {}

  /**
   * The timber behind the sheets.
   *
   * @param frame the framing
   * @param joints what holds it together
   * @param stock the timber that the merchant sells
   */
  public record Framework(Frame frame, JointFasteners joints, TimberStock stock) {}

  /**
   * What a wall is made with.
   *
   * @param tape what it is set out with
   * @param nesting how pieces are laid on sheets and cut
   * @param machine what makes the sheets
   */
  public record Workshop(Tape tape, SheetCuttingRules nesting, Machine machine) {}

  /**
   * Where a wall stands.
   *
   * @param behind what reaches the back of it once it is finished
   * @param supports what holds it up
   * @param room what is around it
   * @param structure by what its strength is checked
   */
  public record Surroundings(
      Behind behind, Supports supports, Room room, GivenStructure structure) {}

  /** What it is set out with. */
  public Tape tape() {
    return workshop.tape();
  }

  /** Run by run from left to right, each from the floor up. */
  public List<Facet> facets() {
    return face.facets();
  }

  /** How what meets at a fold is cut. */
  public FoldEdges foldEdges() {
    return face.foldEdges();
  }

  /** What reaches the back of the finished wall. */
  public Behind behind() {
    return surroundings.behind();
  }

  /** What holds it up. */
  public Supports supports() {
    return surroundings.supports();
  }

  /** What holds a facet up, if it is told. */
  public Optional<GivenSupport> support(Facet facet) {
    return supports().of(facet.name());
  }

  /** By what its strength is checked. */
  public GivenStructure structure() {
    return surroundings.structure();
  }

  /** What is around it. */
  public Room room() {
    return surroundings.room();
  }

  /** The floor, as high as the foot of the first wall's face where that is higher. */
  public RoomPlane floor() {
    return room().floor().plane(frontWidth());
  }

  /** How wide the first wall is along its foot, mm: the one whose axes are the room's. */
  public double frontWidth() {
    return facets().stream()
        .filter(facet -> facet.plane().floorAxes().equals(FloorAxes.FIRST))
        .findFirst()
        .orElseThrow()
        .width();
  }

  /** Whether what begins on the left elsewhere begins on the right. */
  public boolean isMirrored() {
    return face.mirrored();
  }

  /** The stock sheets and how they are laid. */
  public Sheet sheet() {
    return sheeting.sheet();
  }

  /** How pieces are laid on them and cut. */
  public SheetCuttingRules nesting() {
    return workshop.nesting();
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

  /** The pattern and the inserts. */
  public Inserts inserts() {
    return face.inserts();
  }

  /** Where inserts are, for the pattern file. */
  public List<InsertPosition> positions() {
    return face.positions();
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
    return workshop.machine();
  }

  /**
   * How wide a gap a fold leaves in the climbing face, mm: that of sheets cut square which would
   * meet behind it.
   */
  public double foldGap(Fold fold) {
    boolean gaps = face.foldEdges() == FoldEdges.SQUARE && fold.bevel() < 0;
    return gaps ? 2 * sheet().thickness() * Trig.sin(-fold.bevel()) : 0;
  }

  /**
   * How far an edge of a facet may stand out beyond the timber that backs it, mm. Where sheets are
   * cut square at a fold, timber stops short of it.
   */
  public double overhang(Facet facet) {
    return !facet.folds().isEmpty() && face.foldEdges() == FoldEdges.SQUARE
        ? OVERHANG * sheet().thickness()
        : 0;
  }

  /**
   * How far an edge at a seam may go on beyond its timber, which is cut square, to an opening that
   * is no rectangle, mm: as far as a sheet is thick it does not bend (common practice, no source).
   */
  public double rimOverhang() {
    return sheet().thickness();
  }

  /** From an insert's centre to timber behind, whose sides are square to the sheet, mm. */
  public double insertToTimber() {
    return Math.max(
        inserts().body().flange() / 2 + clearance().flange().toTimber(),
        inserts().bolt().zone() / 2 + clearance().boltToTimber());
  }

  /** From a climbing face to the back of its frame, mm. */
  public double frameBack() {
    return sheet().thickness() + frame().depth();
  }

  /** How high the rails are that a frame stands on, mm; 0 where it stands on the floor. */
  public double base(Facet facet) {
    return support(facet)
        .filter(GivenSupport::hasPosts)
        .map(posts -> posts.timber().rail())
        .orElse(0.0);
  }

  /** The zones of a facet, in their order. */
  public List<Zone> zones(Facet facet) {
    return face.zones().stream().filter(zone -> zone.facet().equals(facet.name())).toList();
  }

  /** The zones of a facet whose pattern tells the places of something, in their order. */
  public List<Zone> zones(Facet facet, Points points) {
    return zones(facet).stream().filter(zone -> zone.points() == points).toList();
  }

  /** Whether all inserts stand in columns and rows. */
  public boolean hasLinesOnly() {
    return Stream.concat(
            Stream.of(inserts().pattern()),
            face.zones().stream()
                .filter(zone -> zone.points() == Points.INSERTS)
                .map(Zone::pattern))
        .allMatch(pattern -> pattern.hasLines() || pattern.kind() == Kind.NONE);
  }
}
