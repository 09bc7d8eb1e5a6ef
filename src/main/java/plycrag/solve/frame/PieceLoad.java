package plycrag.solve.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.geometry.Vector3;

/** What acts on a piece of beam between its ends, in the piece's own axes. */
final class PieceLoad {
  static final PieceLoad NONE = new PieceLoad(new Vector3(0, 0, 0), List.of());

  /**
   * A force and a moment.
   *
   * @param at from the piece's start, mm
   * @param force N
   * @param moment N mm
   */
  record Action(double at, Vector3 force, Vector3 moment) {}

  private final Vector3 line;
  private final List<Action> actions;

  private PieceLoad(Vector3 line, List<Action> actions) {
    this.line = line;
    this.actions = actions;
  }

  PieceLoad withLine(Vector3 more) {
    return new PieceLoad(line.plus(more), actions);
  }

  PieceLoad with(Action more) {
    List<Action> all = new ArrayList<>(actions);
    all.add(more);
    all.sort(Comparator.comparingDouble(Action::at));
    return new PieceLoad(line, all);
  }

  /** Spread evenly, N/mm. */
  Vector3 line() {
    return line;
  }

  /** In order along the piece. */
  List<Action> actions() {
    return actions;
  }

  /** What acts as much on the ends of a piece: twelve forces and moments. */
  double[] onEnds(BeamPiece piece) {
    double length = piece.length();
    Vector3 half = line.times(length / 2);
    Vector3 turn = new Vector3(0, -half.z() * length / 6, half.y() * length / 6);
    double[] ends = new double[BeamStiffness.SIZE];
    put(ends, 0, half, turn);
    put(ends, FreedomCount.OF_NODE, half, turn.times(-1));
    actions.forEach(action -> new Deflections(piece, action.at()).add(action, ends));
    return ends;
  }

  private static void put(double[] ends, int at, Vector3 force, Vector3 moment) {
    PieceEnd.put(ends, at, force);
    PieceEnd.put(ends, at + 3, moment);
  }
}
