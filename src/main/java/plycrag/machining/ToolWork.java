package plycrag.machining;

import java.util.List;
import plycrag.document.Move;
import plycrag.document.ToolUse;

/**
 * What one tool does on one sheet.
 *
 * @param use the tool and its holes
 * @param recesses how many of those holes are recesses for flanges
 * @param cuts from the first way across to the last way up, spindle turning
 */
record ToolWork(ToolUse use, int recesses, List<Move> cuts) {
  ToolWork {
    cuts = List.copyOf(cuts);
  }
}
