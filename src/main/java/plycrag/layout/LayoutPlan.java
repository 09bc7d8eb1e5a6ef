package plycrag.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.params.InsertParameters.Pattern;
import plycrag.params.InsertParameters.WhenBlocked;
import plycrag.params.SheetParameters.Lay;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/**
 * Lays a wall out.
 *
 * <ol>
 *   <li>Every facet's pieces, and its frame with the members between others evenly apart.
 *   <li>Columns and rows against that frame, and its movable members with them.
 *   <li>The frame with the members where they were set out, and its joints.
 *   <li>Screws, which slide off the inserts; and what becomes of inserts still blocked.
 *   <li>What holds the frame up.
 *   <li>The pieces on stock sheets.
 * </ol>
 */
public final class LayoutPlan {
  private final Wall wall;
  private final List<Tiling> tilings;
  private final List<Framing> framings;
  private final List<FramedFacet> frames;
  private final List<Optional<FacetSetOut>> setOuts;

  private LayoutPlan(Wall wall) {
    this.wall = wall;
    this.tilings = tilings(wall);
    this.framings = framings(wall, tilings);
    List<FramePlan> plans = framings.stream().map(Framing::plan).toList();
    List<FramedFacet> first = framed(plans);
    this.setOuts = setOuts(plans, first);
    List<FramePlan> settled = settled(plans);
    this.frames = settled.equals(plans) ? first : framed(settled);
  }

  /** The layout of a wall, right or wrong. */
  public static Layout of(Wall wall) {
    return new LayoutPlan(wall).layout();
  }

  private Layout layout() {
    List<List<Joint>> joints = Joints.of(wall, frames);
    List<FacetLayout> facets = new ArrayList<>();
    for (int at = 0; at < frames.size(); at++) {
      facets.add(facet(frames.get(at), setOuts.get(at), joints.get(at)));
    }
    List<Lay> lays = tilings.stream().map(Tiling::lay).toList();
    int last = joints.stream().mapToInt(List::size).sum();
    return new Layout(
        wall, facets, SupportPlan.of(wall, frames, last), SheetPlan.of(wall, facets, lays));
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

  private static List<Framing> framings(Wall wall, List<Tiling> tilings) {
    List<Framing> framings = new ArrayList<>();
    for (int at = 0; at < tilings.size(); at++) {
      framings.add(new Framing(wall, wall.facets().get(at), tilings.get(at).seams()));
    }
    return framings;
  }

  private List<FramedFacet> framed(List<FramePlan> plans) {
    MemberNumbers numbers = new MemberNumbers();
    List<FramedFacet> framed = new ArrayList<>();
    for (int at = 0; at < tilings.size(); at++) {
      Facet facet = wall.facets().get(at);
      Tiling tiling = tilings.get(at);
      framed.add(
          new FramedFacet(
              facet,
              Footing.of(facet, wall),
              tiling.pieces(),
              tiling.seams(),
              framings.get(at).members(plans.get(at), numbers)));
    }
    return framed;
  }

  private List<Optional<FacetSetOut>> setOuts(List<FramePlan> plans, List<FramedFacet> first) {
    List<Optional<FacetSetOut>> setOuts = new ArrayList<>();
    for (int at = 0; at < first.size(); at++) {
      FramedFacet frame = first.get(at);
      setOuts.add(
          wall.inserts().pattern() == Pattern.SCATTER
              ? Optional.empty()
              : Optional.of(
                  FacetSetOut.of(wall, plans.get(at), frame, Neighbour.of(frame, first, wall))));
    }
    return setOuts;
  }

  private List<FramePlan> settled(List<FramePlan> plans) {
    List<FramePlan> settled = new ArrayList<>();
    for (int at = 0; at < plans.size(); at++) {
      FramePlan plan = plans.get(at);
      settled.add(setOuts.get(at).map(setOut -> setOut.settled(plan)).orElse(plan));
    }
    return settled;
  }

  private FacetLayout facet(FramedFacet frame, Optional<FacetSetOut> setOut, List<Joint> joints) {
    List<Neighbour> neighbours = Neighbour.of(frame, frames, wall);
    InsertSurroundings bare = new InsertSurroundings(wall, frame, neighbours, List.of());
    Optional<FacetSetOut> salvaged = setOut.map(one -> salvaged(one, bare));
    InsertSelection unscrewed =
        InsertSelection.of(
            salvaged
                .map(one -> one.lines().inserts())
                .orElseGet(() -> new ScatterPattern(wall, frame).inserts()),
            wall.inserts().whenBlocked(),
            bare);
    MarkedHoles marked =
        MarkedHoles.of(frame.facet(), unscrewed.asked(), lines(frame, unscrewed), wall.tape());
    InsertSurroundings around = new InsertSurroundings(wall, frame, neighbours, marked.screws());
    InsertSelection selection = unscrewed.again(marked.inserts(), around);
    Setting setting =
        salvaged
            .map(one -> one.told(wall.inserts()))
            .orElseGet(() -> new Setting(List.of(), unscrewed.asked().size(), 0));
    return new FacetLayout(
        frame, joints, marked.lines(), selection.kept(), selection.omissions(), setting, around);
  }

  private FacetSetOut salvaged(FacetSetOut setOut, InsertSurroundings surroundings) {
    return switch (wall.inserts().whenBlocked()) {
      case REPORT, DROP, SHIFT -> setOut;
      case NUDGE, SOLVE ->
          new Salvage(wall.inserts(), surroundings.reach(), surroundings, wall.tape()).of(setOut);
    };
  }

  /** The screws; where nothing is to be changed they do not slide either. */
  private List<FastenerLine> lines(FramedFacet frame, InsertSelection selection) {
    boolean isReport = wall.inserts().whenBlocked() == WhenBlocked.REPORT;
    return Fastening.of(wall, frame, isReport ? List.of() : selection.kept());
  }
}
