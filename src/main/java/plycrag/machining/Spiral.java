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
 * A hole wider than its tool, bored in a spiral against the clock, so that the cutter, which turns
 * with it, climbs.
 *
 * <ol>
 *   <li>Down along a ring in {@link Laps}.
 *   <li>Once around at the bottom, then off the wall to the middle and up.
 *   <li>Where a core would stay, from the inside out along as many rings as leave none.
 * </ol>
 */
final class Spiral {
  private final Tool tool;
  private final double top;
  private final double clear;
  private final boolean arcs;

  /**
   * Bores with one tool.
   *
   * @param tool an end mill narrower than the hole
   * @param top of the sheet, Z in mm
   * @param clear above it, where the tool goes across
   * @param arcs whether the controller follows arcs
   */
  Spiral(Tool tool, double top, double clear, boolean arcs) {
    this.tool = tool;
    this.top = top;
    this.clear = clear;
    this.arcs = arcs;
  }

  /** The moves for a hole, from the way to it until the tool is clear again. */
  List<Move> bore(Xy centre, double diameter, double bottom) {
    double outermost = (diameter - tool.diameter()) / 2;
    int rings = (int) Tolerance.wholeUp(2 * outermost / tool.diameter());
    List<Move> moves = new ArrayList<>();
    for (int ring = 1; ring <= rings; ring++) {
      Round way = new Round(centre.x(), centre.y(), outermost * ring / rings);
      moves.addAll(along(way, bottom));
    }
    return moves;
  }

  private List<Move> along(Round way, double bottom) {
    Laps laps = new Laps(tool, arcs);
    int turns = (int) Tolerance.wholeUp((top - bottom) / Laps.deepest(tool));
    double drop = (top - bottom) / turns;
    Coordinate start = way.at(0);
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidXy(start.x, start.y));
    moves.add(new Move.RapidZ(clear));
    moves.add(new Move.Plunge(top, tool.drive().feeds().plunge()));
    for (int turn = 0; turn < turns; turn++) {
      moves.addAll(laps.down(way, bottom + (turns - turn - 1) * drop, drop));
    }
    moves.addAll(laps.level(way, bottom));
    moves.add(new Move.Cut(new Xyz(way.x(), way.y(), bottom), tool.drive().feeds().cut()));
    moves.add(new Move.RapidZ(clear));
    return moves;
  }
}
