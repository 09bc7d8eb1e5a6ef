package plycrag.document;

import java.util.List;

/**
 * What a router is to do with one tool on one face of one sheet.
 *
 * @param sheet the sheet's mark
 * @param side the face that lies up, front or back
 * @param tool the tool's number, from 1
 * @param remarks what the person at the machine must know, in order, one line each; no control
 *     characters
 * @param moves from the first motion to the last
 */
public record DrillProgram(
    String sheet, String side, int tool, List<String> remarks, List<Move> moves) {
  /** Copies the lists. */
  public DrillProgram {
    remarks = List.copyOf(remarks);
    moves = List.copyOf(moves);
  }
}
