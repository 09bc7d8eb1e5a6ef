package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** Lays a wall out. */
public final class LayoutPlan {
  private LayoutPlan() {}

  /** The layout of a wall, right or wrong. */
  public static Layout of(Wall wall) {
    List<FacetLayout> facets = new ArrayList<>();
    List<LaidSheet> sheets = new ArrayList<>();
    for (Facet facet : wall.facets()) {
      Tiling tiling = Tiling.of(facet, wall.sheet(), wall.tape());
      FacetLayout layout = facet(wall, facet, tiling);
      facets.add(layout);
      sheets.addAll(SheetPlan.of(wall, layout, tiling.lay()));
    }
    return new Layout(wall, facets, sheets);
  }

  private static FacetLayout facet(Wall wall, Facet facet, Tiling tiling) {
    List<Member> members = Framing.of(wall, facet, tiling.seams());
    MarkedHoles marked =
        MarkedHoles.of(
            facet,
            InsertPattern.of(wall.inserts(), facet, wall.tape()),
            Fastening.of(wall, facet, tiling.pieces(), members),
            wall.tape());
    InsertSurroundings surroundings =
        new InsertSurroundings(wall, facet, tiling.pieces(), members, marked.screws());
    InsertSelection selection =
        InsertSelection.of(marked.inserts(), wall.inserts().whenBlocked(), surroundings);
    return new FacetLayout(
        facet,
        Footing.of(facet, wall.sheet().thickness(), wall.frame(), wall.tape()),
        tiling.pieces(),
        tiling.seams(),
        members,
        marked.lines(),
        selection.kept(),
        selection.omissions());
  }
}
