package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.Move;
import plycrag.document.Xy;
import plycrag.document.Xyz;
import plycrag.layout.sheets.EngravedMark;
import plycrag.wall.machine.Tool;

/** How an engraver writes: down at the beginning of every stroke, along it, and up. */
final class MarkMoves {
  private final Tool tool;
  private final DrillHeights heights;
  private final double depth;

  /**
   * Moves of one program.
   *
   * @param tool an engraver
   * @param heights of the program
   * @param depth of the letters, mm
   */
  MarkMoves(Tool tool, DrillHeights heights, double depth) {
    this.tool = tool;
    this.heights = heights;
    this.depth = depth;
  }

  /** The moves for marks, from the first way across until the tool is clear again. */
  List<Move> of(List<EngravedMark> marks, SheetOrigin origin) {
    List<Move> moves = new ArrayList<>();
    for (EngravedMark mark : marks) {
      for (List<Xy> stroke : MarkStrokes.of(mark)) {
        moves.addAll(stroke(stroke.stream().map(at -> origin.from(at.x(), at.y())).toList()));
      }
    }
    return moves;
  }

  private List<Move> stroke(List<Xy> way) {
    double bottom = heights.top() - depth;
    List<Move> moves = new ArrayList<>();
    moves.add(new Move.RapidXy(way.get(0).x(), way.get(0).y()));
    moves.add(new Move.RapidZ(heights.clear()));
    moves.add(new Move.Plunge(bottom, tool.drive().feeds().plunge()));
    for (Xy to : way.subList(1, way.size())) {
      moves.add(new Move.Cut(new Xyz(to.x(), to.y(), bottom), tool.drive().feeds().cut()));
    }
    moves.add(new Move.RapidZ(heights.clear()));
    return moves;
  }
}
