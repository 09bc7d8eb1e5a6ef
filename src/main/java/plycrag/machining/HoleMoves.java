package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.layout.sheets.MachinedHole;
import plycrag.solve.tour.Metric;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.Tool.Kind;

/** How tools make holes. */
final class HoleMoves {

  /** As by hand: a recess before the hole in its floor. */
  private static final Comparator<MachinedHole> WIDEST_FIRST =
      Comparator.<MachinedHole>comparingDouble(hole -> hole.bore().diameter()).reversed();

  private final DrillHeights heights;
  private final double thickness;
  private final boolean arcs;

  /**
   * Moves of one program.
   *
   * @param heights of the program
   * @param thickness of the sheet, mm
   * @param arcs whether the controller follows arcs
   */
  HoleMoves(DrillHeights heights, double thickness, boolean arcs) {
    this.heights = heights;
    this.thickness = thickness;
    this.arcs = arcs;
  }

  /**
   * The moves of one tool through holes, in the order of a short tour.
   *
   * @param metric how far it goes from hole to hole
   */
  List<Move> of(Tool tool, List<MachinedHole> holes, SheetOrigin origin, Metric metric) {
    if (holes.isEmpty()) {
      return List.of();
    }
    Map<Xy, List<MachinedHole>> byPlace = new LinkedHashMap<>();
    for (MachinedHole hole : holes) {
      Xy place = origin.from(hole.spot().x(), hole.spot().y());
      byPlace.computeIfAbsent(place, unseen -> new ArrayList<>()).add(hole);
    }
    List<Move> moves = new ArrayList<>();
    for (Xy place : HoleTour.of(List.copyOf(byPlace.keySet()), metric)) {
      byPlace.get(place).stream()
          .sorted(WIDEST_FIRST)
          .forEach(hole -> moves.addAll(hole(tool, place, hole)));
    }
    return moves;
  }

  private List<Move> hole(Tool tool, Xy place, MachinedHole hole) {
    double bottom = heights.bottom(hole.bore().depth(), thickness);
    if (hole.kind() == MachinedHole.Kind.RECESS) {
      return new Pocket(tool, heights.top(), heights.clear(), arcs)
          .cut(place, hole.bore().diameter(), bottom);
    }
    if (tool.kind() == Kind.END_MILL) {
      return new Spiral(tool, heights.top(), heights.clear(), arcs)
          .bore(place, hole.bore().diameter(), bottom);
    }
    double peck = tool.steps().peck().orElse(0.0);
    return List.of(
        new Move.DrillCycle(place, heights.clear(), bottom, peck, tool.drive().feeds().plunge()));
  }
}
