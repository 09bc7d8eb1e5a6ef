package plycrag.layout.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Backing;
import plycrag.layout.skin.Fixity;
import plycrag.layout.skin.FoldCut;
import plycrag.layout.skin.FoldCuts;
import plycrag.layout.skin.LengthDivision;
import plycrag.layout.skin.OpeningsAtSides;
import plycrag.layout.skin.Seam;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Fold;
import plycrag.wall.Frame;
import plycrag.wall.Wall;
import plycrag.wall.buying.TimberStock;

/**
 * Sets the frame of a facet: plates along level sides, across the studs' ends, rakes along slanting
 * ones, studs flush with upright sides, at every seam that runs up, beside openings and between
 * them at the greatest spacing or less, headers above and below openings, and blocking between the
 * studs wherever the edge of a piece has nothing else behind it. At a mitred fold the timber of
 * both facets lies back to back in the plane that halves it, and what meets it ends against it.
 */
public final class Framing {
  private final Facet facet;
  private final Frame frame;
  private final TimberStock stock;
  private final List<Seam> seams;
  private final List<Seam> inLine;
  private final Footing footing;
  private final FoldCuts cuts;
  private final GroundEdge edge;
  private final Polygon area;
  private final EdgeStrips edges;
  private final Openings openings;
  private final BlockingRows rows;
  private final Tape tape;
  private final boolean fromRight;
  private final double rim;

  /**
   * The frame of a facet.
   *
   * @param inLine seams of other facets with whose studs its own are to be in line
   */
  public Framing(Wall wall, Facet facet, List<Seam> seams, List<Seam> inLine) {
    this.facet = facet;
    this.frame = wall.frame();
    this.stock = wall.stock();
    this.seams = seams;
    this.inLine = inLine;
    this.footing = Footing.of(facet, wall);
    this.cuts = FoldCuts.of(facet, wall);
    this.tape = wall.tape();
    this.fromRight = wall.isMirrored();
    this.rim = wall.rimOverhang();
    this.edge = footing.edge(facet, wall);
    this.area = new OpeningsAtSides(facet, outward()).opened(edge.outer());
    this.edges = new EdgeStrips(edge.outer(), edge.cuts(), frame, rim);
    this.openings = Openings.of(facet.cutouts(), frame, this::studs);
    this.rows = BlockingRows.of(backedRows(), plateMiddles(), across(), frame, tape);
  }

  /** The studs, rows of blocking and openings as they are planned first. */
  public FramePlan plan() {
    return new FramePlan(openings, rows, across());
  }

  /** The members of the frame: role by role, each in reading order. */
  public List<DraftMember> members(FramePlan plan) {
    FrameGround ground = new FrameGround(area, SlopingSide.of(edge.outer(), edge.cuts()), rim);
    new FrameFill(plan, edges, ground, stock, frame.longStuds()).fill();
    return Stream.of(MemberRole.values()).flatMap(role -> ofRole(role, ground)).toList();
  }

  /** The frames of a wall whose ends are cut shorter where walls that meet need it. */
  public static List<FramedFacet> clearOfEachOther(Wall wall, List<FramedFacet> frames) {
    return ClearedEnds.of(wall, frames);
  }

  /**
   * How far the ground goes beyond each side of the facet: to the cut at a fold, or down to the
   * floor where the frame goes on below.
   */
  private IntToDoubleFunction outward() {
    Envelope box = facet.boundary().getEnvelopeInternal();
    List<Boolean> onFloor =
        Shapes.outerEdges(facet.boundary()).stream()
            .map(edge -> edge.getEnvelopeInternal().getMaxY() <= box.getMinY())
            .toList();
    return side ->
        onFloor.get(side) && !facet.standsOnFacet()
            ? -footing.plateLow()
            : cuts.sides().get(side).timber();
  }

  private StudPlan studs(List<StudPlan.Station> further) {
    List<StudPlan.Station> stations = new ArrayList<>();
    edges.uprights().stream().filter(this::isOnGround).forEach(stations::add);
    stations.add(StudPlan.Station.end(across().low()));
    stations.add(StudPlan.Station.end(across().high()));
    seams.stream()
        .filter(seam -> seam.axis() == Axis.UP)
        .forEach(seam -> stations.add(StudPlan.Station.seam(seam, frame)));
    further.stream().filter(this::isOnGround).forEach(stations::add);
    inLine.stream()
        .flatMap(seam -> StudPlan.Station.inLine(seam, frame).stream())
        .filter(station -> station.isClear(stations, across()))
        .forEach(stations::add);
    return StudPlan.of(stations, frame, tape, fromRight);
  }

  /** An opening may take a side of the facet, or reach beyond one: nothing stands there. */
  private boolean isOnGround(StudPlan.Station station) {
    return Tolerance.atLeast(station.place(), across().low())
        && Tolerance.atMost(station.place(), across().high());
  }

  private LengthDivision.Span across() {
    Envelope box = area.getEnvelopeInternal();
    return new LengthDivision.Span(box.getMinX(), box.getMaxX());
  }

  /** Where edges and seams ask for blocking. */
  private List<BlockingRows.Row> backedRows() {
    LengthDivision.Span across = across();
    List<BlockingRows.Row> asked = new ArrayList<>();
    if (footing.isBelowFacet()) {
      Backing backing = Backing.from(0, frame, Fixity.EDGE);
      asked.add(new BlockingRows.Row(backing, across.low(), across.high()));
    }
    crowdedRows().forEach(row -> asked.add(new BlockingRows.Row(row, across.low(), across.high())));
    for (Seam seam : seams) {
      if (seam.axis() == Axis.ACROSS) {
        boolean whole = seam.low() <= 0 && seam.high() >= facet.width();
        double left = whole ? across.low() : seam.low();
        double right = whole ? across.high() : seam.high();
        Backing.of(seam, frame)
            .forEach(backing -> asked.add(new BlockingRows.Row(backing, left, right)));
      }
    }
    return asked;
  }

  /** Beside plates at folds that have no room for screws. */
  private List<Backing> crowdedRows() {
    Envelope box = area.getEnvelopeInternal();
    List<Backing> rows = new ArrayList<>();
    if (cut(Fold.Place.BELOW).crowded()) {
      double low = box.getMinY() + cut(Fold.Place.BELOW).breadth(frame.breadth());
      rows.add(Backing.from(low, frame, Fixity.EDGE));
    }
    if (cut(Fold.Place.ABOVE).crowded()) {
      double high = box.getMaxY() - cut(Fold.Place.ABOVE).breadth(frame.breadth());
      rows.add(Backing.from(high - frame.breadth(), frame, Fixity.EDGE));
    }
    return rows;
  }

  /** From the middle of the lowest plate to that of the highest, or to a top without one. */
  private LengthDivision.Span plateMiddles() {
    Envelope box = area.getEnvelopeInternal();
    boolean isLevel =
        edges.plates().stream()
            .anyMatch(plate -> plate.beside().high() > box.getMaxY() - Tolerance.TOUCH);
    return new LengthDivision.Span(
        box.getMinY() + cut(Fold.Place.BELOW).breadth(frame.breadth()) / 2,
        isLevel
            ? box.getMaxY() - cut(Fold.Place.ABOVE).breadth(frame.breadth()) / 2
            : box.getMaxY());
  }

  private FoldCut cut(Fold.Place place) {
    return facet.fold(place).map(fold -> cuts.sides().get(fold.side())).orElse(FoldCut.none());
  }

  /** Uprights from the left, level ones as they were set. */
  private static Stream<DraftMember> ofRole(MemberRole role, FrameGround ground) {
    Stream<DraftMember> drafts =
        ground.taken().stream().filter(draft -> draft.wished().role() == role);
    return role.isUpright()
        ? drafts.sorted(
            Comparator.comparingDouble((DraftMember draft) -> draft.wished().beside().low())
                .thenComparingDouble(draft -> draft.along().low()))
        : drafts;
  }
}
