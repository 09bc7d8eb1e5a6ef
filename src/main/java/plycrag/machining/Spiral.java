package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.geometry.Round;
import plycrag.params.ToolParameters;

/**
 * A hole wider than its tool, bored in a spiral against the clock, so that the cutter, which turns
 * with it, climbs.
 *
 * <ol>
 *   <li>Down along a ring, no deeper a turn than the tool cuts at a time and half its diameter
 *       (common practice, no source), and no faster down than it plunges.
 *   <li>Once around at the bottom, then off the wall to the middle and up.
 *   <li>Where a core would stay, from the inside out along as many rings as leave none.
 * </ol>
 *
 * @param tool an end mill narrower than the hole
 * @param top of the sheet, Z in mm
 * @param clear above it, where the tool goes across
 * @param arcs whether the controller follows arcs
 */
record Spiral(ToolParameters tool, double top, double clear, boolean arcs) {
  /** How far a straight move may stray from its arc, mm. */
  static final double CHORD_ERROR = 0.02;

  private static final double TOLERANCE = 1e-6;

  /** The moves for a hole, from the way to it until the tool is clear again. */
  List<Move> bore(Xy centre, double diameter, double bottom) {
    double outermost = (diameter - tool.diameter()) / 2;
    int rings = (int) Math.ceil(2 * outermost / tool.diameter() - TOLERANCE);
    List<Move> moves = new ArrayList<>();
    for (int ring = 1; ring <= rings; ring++) {
      Round way = new Round(centre.x(), centre.y(), outermost * ring / rings);
      moves.addAll(along(way, bottom));
    }
    return moves;
  }

  private List<Move> along(Round way, double bottom) {
    int turns = (int) Math.ceil((top - bottom) / deepestTurn() - TOLERANCE);
    double drop = (top - bottom) / turns;
    double feed = Math.min(tool.feeds().cut(), tool.feeds().plunge() * way.length() / drop);
    Coordinate start = way.at(0);
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidXy(start.x, start.y));
    moves.add(new Move.RapidZ(clear));
    moves.add(new Move.Plunge(top, tool.feeds().plunge()));
    for (int turn = 0; turn < turns; turn++) {
      moves.addAll(turn(way, bottom + (turns - turn - 1) * drop, drop, feed));
    }
    moves.addAll(turn(way, bottom, 0, tool.feeds().cut()));
    moves.add(new Move.Cut(new Xyz(way.x(), way.y(), bottom), tool.feeds().cut()));
    moves.add(new Move.RapidZ(clear));
    return moves;
  }

  private double deepestTurn() {
    return Math.min(tool.passDepth(), tool.diameter() / 2);
  }

  private List<Move> turn(Round way, double low, double drop, double feed) {
    int parts = arcs ? 2 : way.sides(CHORD_ERROR);
    List<Move> moves = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      Coordinate end = way.at(360.0 * part / parts);
      Xyz to = new Xyz(end.x, end.y, low + drop * (parts - part) / parts);
      moves.add(
          arcs ? new Move.Arc(to, new Xy(way.x(), way.y()), false, feed) : new Move.Cut(to, feed));
    }
    return moves;
  }
}
