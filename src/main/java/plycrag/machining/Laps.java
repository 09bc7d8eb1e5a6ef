package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.geometry.Round;
import plycrag.wall.machine.Tool;

/**
 * Full turns of an end mill on a ring against the clock, each from where the ring begins to there.
 */
final class Laps {
  /** How far a straight move may stray from its arc, mm. */
  static final double CHORD_ERROR = 0.02;

  private final Tool tool;
  private final boolean arcs;

  /**
   * Turns of one tool.
   *
   * @param tool an end mill
   * @param arcs whether the controller follows arcs
   */
  Laps(Tool tool, boolean arcs) {
    this.tool = tool;
    this.arcs = arcs;
  }

  /**
   * How far a tool goes down in a turn at most: what it cuts at a time, and half of its diameter
   * (common practice, no source), mm.
   */
  static double deepest(Tool tool) {
    return Math.min(tool.steps().pass(), tool.diameter() / 2);
  }

  /**
   * One turn down to a height, no faster down than the tool plunges; as fast along arcs as along
   * the short straight moves in their stead.
   */
  List<Move> down(Round ring, double low, double drop) {
    int sides = ring.sides(CHORD_ERROR);
    double side = ring.at(0).distance(ring.at(360.0 / sides));
    return turn(ring, low, drop, Descent.feed(tool, side, drop / sides));
  }

  /** One turn that stays at a height. */
  List<Move> level(Round ring, double z) {
    return turn(ring, z, 0, tool.drive().feeds().cut());
  }

  private List<Move> turn(Round ring, double low, double drop, double feed) {
    int parts = arcs ? 2 : ring.sides(CHORD_ERROR);
    List<Move> moves = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      Coordinate end = ring.at(360.0 * part / parts);
      Xyz to = new Xyz(end.x, end.y, low + drop * (parts - part) / parts);
      moves.add(
          arcs
              ? new Move.Arc(to, new Xy(ring.x(), ring.y()), false, feed)
              : new Move.Cut(to, feed));
    }
    return moves;
  }
}
