package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.geometry.Tolerance;
import plycrag.wall.machine.Routing.Entry;
import plycrag.wall.machine.Tool;

/**
 * Follows a way in passes.
 *
 * <p>On a closed way each pass begins with a ramp of one in ten (common practice, no source) along
 * the way and ends where the ramp ended, so that nothing of it stays; a ramp is no faster down than
 * the tool plunges; or it falls evenly all the way round, and goes round once more at the bottom.
 * On an open one the tool comes down beside the sheet and goes to the other end.
 */
final class PassMoves {
  private static final double RAMP = 10;

  private final Tool tool;
  private final DrillHeights heights;
  private final Tabs tabs;
  private final Entry entry;

  /**
   * Follows ways with one tool.
   *
   * @param tool an end mill
   * @param heights of the program
   * @param tabs what is left to hold the piece
   * @param entry how it gets from pass to pass
   */
  PassMoves(Tool tool, DrillHeights heights, Tabs tabs, Entry entry) {
    this.entry = entry;
    this.tool = tool;
    this.heights = heights;
    this.tabs = tabs;
  }

  /** All passes down to a bottom, from the way there until the tool is clear again. */
  List<Move> cut(CutPath path, double bottom) {
    int passes = (int) Tolerance.wholeUp((heights.top() - bottom) / tool.steps().pass());
    double drop = (heights.top() - bottom) / passes;
    return path.closed() ? round(path, passes, bottom, drop) : along(path, passes, bottom, drop);
  }

  private List<Move> round(CutPath path, int passes, double bottom, double drop) {
    List<Move> moves = approach(path);
    moves.add(new Move.Plunge(heights.top(), tool.drive().feeds().plunge()));
    boolean helix = entry == Entry.HELIX;
    double ramp = helix ? path.length() : Math.min(RAMP * drop, path.length());
    double at = 0;
    for (int pass = 1; pass <= passes; pass++) {
      double low = bottom + (passes - pass) * drop;
      moves.addAll(stretch(path, at, at + ramp, low + drop, low));
      at += ramp;
      if (!helix || pass == passes) {
        moves.addAll(stretch(path, at, at + path.length(), low, low));
      }
      at %= path.length();
    }
    moves.add(new Move.RapidZ(heights.clear()));
    return moves;
  }

  private List<Move> along(CutPath path, int passes, double bottom, double drop) {
    List<Move> moves = new ArrayList<>();
    for (int pass = 1; pass <= passes; pass++) {
      double low = bottom + (passes - pass) * drop;
      moves.addAll(approach(path));
      moves.add(new Move.Plunge(low, tool.drive().feeds().plunge()));
      moves.addAll(stretch(path, 0, path.length(), low, low));
      moves.add(new Move.RapidZ(heights.clear()));
    }
    return moves;
  }

  private List<Move> approach(CutPath path) {
    Xy start = path.at(0);
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidXy(start.x(), start.y()));
    moves.add(new Move.RapidZ(heights.clear()));
    return moves;
  }

  /** From one place along the way to another, falling evenly, but up over the tabs. */
  private List<Move> stretch(CutPath path, double from, double to, double high, double low) {
    List<Double> stops = new ArrayList<>(path.corners(from, to));
    stops.addAll(tabs.ends(from, to, path.length(), low));
    stops.add(to);
    stops.sort(null);
    List<Move> moves = new ArrayList<>();
    double at = from;
    for (double stop : stops) {
      double middle = (at + stop) / 2;
      double begin = high + (low - high) * (at - from) / (to - from);
      double end = high + (low - high) * (stop - from) / (to - from);
      begin = Math.max(begin, tabs.floor(at, middle, path.length()));
      end = Math.max(end, tabs.floor(stop, middle, path.length()));
      addStep(moves, path.at(at), begin);
      Xy next = path.at(stop);
      moves.add(
          new Move.Cut(at(next, end), Descent.feed(tool, beside(path.at(at), next), begin - end)));
      at = stop;
    }
    return moves;
  }

  private static double beside(Xy from, Xy to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Up onto a tab or down from it, where the last cut ended at another height. */
  private void addStep(List<Move> moves, Xy place, double z) {
    if (!moves.isEmpty()
        && moves.get(moves.size() - 1) instanceof Move.Cut last
        && !Tolerance.same(last.to().z(), z)) {
      moves.add(new Move.Cut(at(place, z), tool.drive().feeds().plunge()));
    }
  }

  private static Xyz at(Xy place, double z) {
    return new Xyz(place.x(), place.y(), z);
  }
}
