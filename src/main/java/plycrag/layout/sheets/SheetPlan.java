package plycrag.layout.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Distances;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Screw;
import plycrag.layout.sheets.MachinedHole.Bore;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.MachinedHole.Marks;
import plycrag.layout.sheets.MachinedHole.OnSheet;
import plycrag.layout.skin.Piece;
import plycrag.layout.skin.Skin;
import plycrag.solve.nest.Blank;
import plycrag.solve.nest.LaidBlank;
import plycrag.solve.nest.NestTask;
import plycrag.solve.nest.NestTask.Lying;
import plycrag.solve.nest.NestTask.Manner;
import plycrag.solve.nest.Nesting;
import plycrag.solve.nest.SheetKind;
import plycrag.solve.nest.StockSheet;
import plycrag.wall.Sheet.Lay;
import plycrag.wall.Wall;
import plycrag.wall.machine.ClearanceHoles;
import plycrag.wall.machine.ClearanceHoles.Sink;
import plycrag.wall.machine.SheetCuttingRules;
import plycrag.wall.machine.SheetCuttingRules.FaceUp;
import plycrag.wall.machine.SheetCuttingRules.Grain;

/** Lays the pieces of all facets on stock sheets and carries their holes over. */
public final class SheetPlan {
  /** Prices are whole parts of a sheet's. */
  private static final double PRICE = 1e6;

  private final Wall wall;
  private final SheetFace faceUp;
  private final Map<String, PieceOnFacet> pieces = new HashMap<>();
  private final List<Blank> blanks = new ArrayList<>();

  private record PieceOnFacet(
      Piece piece, String facet, List<Insert> inserts, List<Screw> screws) {}

  private SheetPlan(Wall wall) {
    this.wall = wall;
    this.faceUp = wall.nesting().faceUp() == FaceUp.FRONT ? SheetFace.FRONT : SheetFace.BACK;
  }

  /**
   * The sheets of a wall.
   *
   * @param lays which way the sheets' long side runs on each facet
   */
  public static List<LaidSheet> of(Wall wall, List<FacetLayout> facets, List<Lay> lays) {
    SheetPlan plan = new SheetPlan(wall);
    for (int at = 0; at < facets.size(); at++) {
      plan.add(facets.get(at), lays.get(at));
    }
    return Nesting.of(plan.task()).stream().map(plan::laid).toList();
  }

  /** How many sheets the pieces of a wall take. */
  public static int count(Wall wall, List<Skin> skins) {
    SheetPlan plan = new SheetPlan(wall);
    int pieces = 0;
    for (Skin skin : skins) {
      for (Piece piece : skin.numberedFrom(pieces + 1).pieces()) {
        plan.blanks.add(new Blank(piece.mark(), piece.blank(), skin.lay() == Lay.ACROSS));
      }
      pieces += skin.pieces().size();
    }
    return Nesting.of(plan.task()).size();
  }

  private void add(FacetLayout facet, Lay lay) {
    SpatialIndex<Insert> index =
        new SpatialIndex<>(facet.inserts(), insert -> insert.centre().getEnvelopeInternal());
    Map<String, List<Screw>> screws =
        facet.screws().stream().collect(Collectors.groupingBy(Screw::piece));
    for (Piece piece : facet.pieces()) {
      List<Insert> inserts =
          index.near(piece.box(), 0).stream()
              .filter(insert -> Distances.covers(piece.outline(), insert.centre()))
              .toList();
      pieces.put(
          piece.mark(),
          new PieceOnFacet(
              piece, facet.facet().name(), inserts, screws.getOrDefault(piece.mark(), List.of())));
      blanks.add(new Blank(piece.mark(), piece.blank(), lay == Lay.ACROSS));
    }
  }

  private NestTask task() {
    SheetCuttingRules nesting = wall.nesting();
    Lying lying =
        switch (wall.machine().equipment().limits().longSide()) {
          case AS_BUILT -> Lying.AS_BUILT;
          case X -> Lying.LONG_ALONG_X;
          case Y -> Lying.LONG_ALONG_Y;
        };
    Manner manner = new Manner(nesting.grain() == Grain.FREE, faceUp == SheetFace.BACK, lying);
    return new NestTask(blanks, kinds(), nesting.gap(), nesting.margin(), manner);
  }

  private List<SheetKind> kinds() {
    List<SheetKind> kinds = new ArrayList<>();
    kinds.add(
        new SheetKind(
            wall.sheet().length(), wall.sheet().width(), (long) PRICE, SheetKind.UNLIMITED));
    for (SheetCuttingRules.Kind kind : wall.nesting().others()) {
      long price = Math.round(kind.price() * PRICE);
      kinds.add(
          new SheetKind(
              kind.length(), kind.width(), price, kind.count().orElse(SheetKind.UNLIMITED)));
    }
    return kinds;
  }

  private LaidSheet laid(StockSheet stock) {
    List<LaidPiece> laid = new ArrayList<>();
    List<MachinedHole> holes = new ArrayList<>();
    for (LaidBlank blank : stock.blanks()) {
      PieceOnFacet piece = pieces.get(blank.mark());
      LaidPiece one = new LaidPiece(piece.piece(), piece.facet(), blank.placement());
      laid.add(one);
      HoleOnSheet hole = new HoleOnSheet(one, stock.mark());
      piece.inserts().forEach(insert -> holes.add(hole.of(insert)));
      wall.machine().work().screwHoles().ifPresent(wanted -> holes.addAll(hole.of(piece, wanted)));
    }
    return new LaidSheet(stock, faceUp, laid, holes);
  }

  /** Carries holes over to a sheet. */
  private final class HoleOnSheet {
    private final LaidPiece laid;
    private final String sheet;

    HoleOnSheet(LaidPiece laid, String sheet) {
      this.laid = laid;
      this.sheet = sheet;
    }

    MachinedHole of(Insert insert) {
      return through(Kind.INSERT, insert.mark(), insert.centre(), wall.inserts().body().hole());
    }

    /** For all screws of a piece, each with its head where heads are let in. */
    List<MachinedHole> of(PieceOnFacet piece, ClearanceHoles wanted) {
      List<MachinedHole> all = new ArrayList<>();
      for (Screw screw : piece.screws()) {
        all.add(through(Kind.SCREW, screw.mark(), screw.centre(), wanted.diameter()));
        wanted.sink().ifPresent(sink -> all.add(sunk(screw, sink)));
      }
      return all;
    }

    /** Heads lie in the climbing face, whichever is up. */
    private MachinedHole sunk(Screw screw, Sink sink) {
      MachinedHole hole = through(Kind.COUNTERSINK, screw.mark(), screw.centre(), sink.head());
      return hole.from(SheetFace.FRONT, CountersinkDepth.depth(wall.machine(), sink));
    }

    private MachinedHole through(Kind kind, String mark, Point place, double diameter) {
      return new MachinedHole(
          new Marks(mark, laid.facet(), laid.piece().mark(), sheet),
          kind,
          place,
          new OnSheet(laid.placement().x(place), laid.placement().y(place)),
          new Bore(diameter, wall.sheet().thickness(), faceUp));
    }
  }
}
