package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.nest.Blank;
import plycrag.layout.nest.Nesting;
import plycrag.layout.nest.StockSheet;
import plycrag.params.SheetParameters;
import plycrag.params.SheetParameters.Lay;
import plycrag.wall.Wall;

/** Lays the pieces of a facet on stock sheets and carries their holes over. */
final class SheetPlan {
  private final Wall wall;
  private final FacetLayout facet;
  private final SpatialIndex<Insert> inserts;

  private SheetPlan(Wall wall, FacetLayout facet) {
    this.wall = wall;
    this.facet = facet;
    this.inserts =
        new SpatialIndex<>(facet.inserts(), insert -> insert.centre().getEnvelopeInternal());
  }

  static List<LaidSheet> of(Wall wall, FacetLayout facet, Lay lay, int first) {
    SheetParameters sheet = wall.sheet();
    double width = lay == Lay.ACROSS ? sheet.length() : sheet.width();
    double height = lay == Lay.ACROSS ? sheet.width() : sheet.length();
    List<Blank> blanks =
        facet.pieces().stream().map(piece -> new Blank(piece.mark(), piece.blank())).toList();
    List<StockSheet> stock = Nesting.onePerSheet(blanks, width, height, first);
    SheetPlan plan = new SheetPlan(wall, facet);
    List<LaidSheet> sheets = new ArrayList<>();
    for (int at = 0; at < stock.size(); at++) {
      sheets.add(plan.laid(stock.get(at), facet.pieces().get(at)));
    }
    return sheets;
  }

  private LaidSheet laid(StockSheet stock, Piece piece) {
    List<MachinedHole> holes =
        inserts.near(piece.box(), 0).stream()
            .filter(insert -> piece.outline().covers(insert.centre()))
            .map(insert -> hole(insert, stock, piece))
            .toList();
    return new LaidSheet(stock, piece, facet.facet().name(), holes);
  }

  private MachinedHole hole(Insert insert, StockSheet stock, Piece piece) {
    return new MachinedHole(
        insert.mark(),
        facet.facet().name(),
        piece.mark(),
        stock.mark(),
        MachinedHole.Kind.INSERT,
        insert.centre(),
        stock.placement().x(insert.centre()),
        stock.placement().y(insert.centre()),
        wall.inserts().hole(),
        wall.sheet().thickness(),
        Face.FRONT);
  }
}
