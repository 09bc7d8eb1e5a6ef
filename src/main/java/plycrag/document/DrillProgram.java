package plycrag.document;

import java.util.List;

/**
 * What a router is to do on one face of one sheet, with one tool or with several.
 *
 * @param sheet the sheet's mark
 * @param side the face that lies up, front or back
 * @param place in the order in which a sheet's programs run, both its faces counted, from 1
 * @param remarks what the person at the machine must know, in order, one line each; no control
 *     characters
 * @param moves from the first motion to the last
 * @param uses what is done with each tool, in order
 */
public record DrillProgram(
    String sheet,
    String side,
    int place,
    List<String> remarks,
    List<Move> moves,
    List<ToolUse> uses) {
  /** Copies the lists. */
  public DrillProgram {
    remarks = List.copyOf(remarks);
    moves = List.copyOf(moves);
    uses = List.copyOf(uses);
  }

  /** The number of the tool that it begins with. */
  public int tool() {
    return uses.get(0).number();
  }
}
