package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.geometry.Round;
import plycrag.geometry.Tolerance;
import plycrag.wall.machine.Tool;

/**
 * A round hole with a flat floor that is much wider than its tool, cleared in layers, against the
 * clock like a {@link Spiral}.
 *
 * <ol>
 *   <li>Down along the innermost ring in a spiral, a layer deep, and once around on its floor.
 *   <li>Outward ring by ring, each no further from the last than half of the tool's diameter, the
 *       outermost along the wall; then straight back to the innermost over the floor for the next
 *       layer.
 *   <li>At the bottom off the wall to the middle and up.
 * </ol>
 */
final class Pocket {
  private final Tool tool;
  private final double top;
  private final double clear;
  private final boolean arcs;

  /**
   * Clears with one tool.
   *
   * @param tool an end mill narrower than the hole
   * @param top of the sheet, Z in mm
   * @param clear above it, where the tool goes across
   * @param arcs whether the controller follows arcs
   */
  Pocket(Tool tool, double top, double clear, boolean arcs) {
    this.tool = tool;
    this.top = top;
    this.clear = clear;
    this.arcs = arcs;
  }

  /** The moves, from the way to it until the tool is clear again. */
  List<Move> cut(Xy centre, double diameter, double bottom) {
    List<Round> rings = rings(centre, diameter);
    Laps laps = new Laps(tool, arcs);
    Coordinate start = rings.get(0).at(0);
    int layers = (int) Tolerance.wholeUp((top - bottom) / Laps.deepest(tool));
    double drop = (top - bottom) / layers;
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidXy(start.x, start.y));
    moves.add(new Move.RapidZ(clear));
    moves.add(new Move.Plunge(top, tool.drive().feeds().plunge()));
    for (int layer = 1; layer <= layers; layer++) {
      double floor = bottom + (layers - layer) * drop;
      if (layer > 1 && rings.size() > 1) {
        moves.add(to(start, floor + drop));
      }
      moves.addAll(laps.down(rings.get(0), floor, drop));
      moves.addAll(laps.level(rings.get(0), floor));
      for (Round ring : rings.subList(1, rings.size())) {
        moves.add(to(ring.at(0), floor));
        moves.addAll(laps.level(ring, floor));
      }
    }
    moves.add(to(new Coordinate(centre.x(), centre.y()), bottom));
    moves.add(new Move.RapidZ(clear));
    return moves;
  }

  /** From the inside out. */
  private List<Round> rings(Xy centre, double diameter) {
    double outermost = (diameter - tool.diameter()) / 2;
    int count = (int) Tolerance.wholeUp(2 * outermost / tool.diameter());
    List<Round> rings = new ArrayList<>();
    for (int ring = 1; ring <= count; ring++) {
      rings.add(new Round(centre.x(), centre.y(), outermost * ring / count));
    }
    return rings;
  }

  private Move to(Coordinate place, double z) {
    return new Move.Cut(new Xyz(place.x, place.y, z), tool.drive().feeds().cut());
  }
}
