package plycrag.machining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.layout.MachinedHole;
import plycrag.params.ToolParameters;
import plycrag.params.ToolParameters.Kind;

/**
 * How tools make holes.
 *
 * @param heights of the program
 * @param thickness of the sheet, mm
 * @param arcs whether the controller follows arcs
 */
record HoleMoves(DrillHeights heights, double thickness, boolean arcs) {

  /** The moves of one tool through holes, in the order of a short tour. */
  List<Move> of(ToolParameters tool, List<MachinedHole> holes, SheetOrigin origin) {
    if (holes.isEmpty()) {
      return List.of();
    }
    Map<Xy, MachinedHole> byPlace = new LinkedHashMap<>();
    holes.forEach(hole -> byPlace.put(origin.from(hole.x(), hole.y()), hole));
    List<Move> moves = new ArrayList<>();
    for (Xy place : HoleTour.of(List.copyOf(byPlace.keySet()))) {
      moves.addAll(hole(tool, place, byPlace.get(place)));
    }
    return moves;
  }

  private List<Move> hole(ToolParameters tool, Xy place, MachinedHole hole) {
    double bottom = heights.bottom(hole.depth(), thickness);
    if (tool.kind() == Kind.END_MILL) {
      return new Spiral(tool, heights.top(), heights.clear(), arcs)
          .bore(place, hole.diameter(), bottom);
    }
    double peck = tool.peck().orElse(0.0);
    return List.of(
        new Move.DrillCycle(place, heights.clear(), bottom, peck, tool.feeds().plunge()));
  }
}
