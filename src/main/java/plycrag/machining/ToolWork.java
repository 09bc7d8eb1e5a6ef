package plycrag.machining;

import java.util.List;
import plycrag.document.Move;

/**
 * What one tool does on one sheet.
 *
 * @param number of the tool, from 1
 * @param tool in words
 * @param speed rpm
 * @param holes how many it makes
 * @param cuts from the first way across to the last way up, spindle turning
 */
record ToolWork(int number, String tool, double speed, int holes, List<Move> cuts) {
  ToolWork {
    cuts = List.copyOf(cuts);
  }
}
