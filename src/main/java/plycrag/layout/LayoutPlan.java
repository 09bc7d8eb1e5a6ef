package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import plycrag.params.InsertParameters.Pattern;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** Lays a wall out: first every facet's pieces and frame, then what is set between them. */
public final class LayoutPlan {
  private final Wall wall;
  private final List<Tiling> tilings;
  private final List<FramedFacet> frames;

  private LayoutPlan(Wall wall) {
    this.wall = wall;
    this.tilings = tilings(wall);
    this.frames = frames(wall, tilings);
  }

  /** The layout of a wall, right or wrong. */
  public static Layout of(Wall wall) {
    return new LayoutPlan(wall).layout();
  }

  private Layout layout() {
    List<List<Joint>> joints = Joints.of(wall, frames);
    List<FacetLayout> facets = new ArrayList<>();
    for (int at = 0; at < frames.size(); at++) {
      facets.add(facet(frames.get(at), joints.get(at)));
    }
    List<LaidSheet> sheets = new ArrayList<>();
    for (int at = 0; at < facets.size(); at++) {
      sheets.addAll(SheetPlan.of(wall, facets.get(at), tilings.get(at).lay(), sheets.size() + 1));
    }
    return new Layout(wall, facets, sheets);
  }

  private static List<Tiling> tilings(Wall wall) {
    List<Tiling> tilings = new ArrayList<>();
    int pieces = 0;
    for (Facet facet : wall.facets()) {
      Tiling tiling = Tiling.of(facet, wall, pieces + 1);
      pieces += tiling.pieces().size();
      tilings.add(tiling);
    }
    return tilings;
  }

  private static List<FramedFacet> frames(Wall wall, List<Tiling> tilings) {
    MemberNumbers numbers = new MemberNumbers();
    List<FramedFacet> frames = new ArrayList<>();
    for (int at = 0; at < tilings.size(); at++) {
      Facet facet = wall.facets().get(at);
      Tiling tiling = tilings.get(at);
      frames.add(
          new FramedFacet(
              facet,
              Footing.of(facet, wall.sheet().thickness(), wall.frame(), wall.tape()),
              tiling.pieces(),
              tiling.seams(),
              Framing.of(wall, facet, tiling.seams(), numbers)));
    }
    return frames;
  }

  private FacetLayout facet(FramedFacet frame, List<Joint> joints) {
    Facet facet = frame.facet();
    MarkedHoles marked =
        MarkedHoles.of(
            facet,
            wall.inserts().pattern() == Pattern.SCATTER
                ? new ScatterPattern(wall, frame).inserts()
                : InsertPattern.of(wall.inserts(), facet, wall.tape()),
            Fastening.of(wall, facet, frame.pieces(), frame.members()),
            wall.tape());
    List<Neighbour> neighbours = Neighbour.of(frame, frames, wall);
    InsertSurroundings surroundings =
        new InsertSurroundings(wall, frame, neighbours, marked.screws());
    InsertSelection selection =
        InsertSelection.of(marked.inserts(), wall.inserts().whenBlocked(), surroundings);
    return new FacetLayout(frame, joints, marked.lines(), selection.kept(), selection.omissions());
  }
}
