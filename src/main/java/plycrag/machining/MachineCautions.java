package plycrag.machining;

import java.util.List;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.document.Book.Checklist;

/** What keeps the person at the machine, the sheet and the tool whole. */
final class MachineCautions {
  private MachineCautions() {}

  /**
   * All of them.
   *
   * @param raised by how much Z zero is raised for the dry run, with its unit
   */
  static List<Block> of(String raised) {
    return List.of(
          new Caution(
              "Dust.",
              "Wood dust harms the lungs and burns: extract it at the tool and wear a mask."),
          new Caution("Eyes and ears.", "Protection on before the spindle turns, doors shut."),
          new Caution(
              "Work holding.",
              "Hold the sheet down all over, on a board that may be drilled into, with nothing"
                  + " of metal where the tool goes. A sheet that lifts breaks the tool and flies."),
          new Caution(
              "Dry run.",
              "Run every program once above the work, with Z zero raised by "
                  + raised
                  + ": the tool then clears the sheet and all that is told to stand on it. A hand at"
                  + " the stop; afterwards set Z zero back."),
          new Checklist(
              List.of(
                  "Sheet measured: thickness as above",
                  "Face up as above, its mark written on it",
                  "Held down; clamps below the safe height",
                  "Tool of the program loaded, sound and tight",
                  "X, Y and Z zero set as above",
                  "Dry run made",
                  "Extraction on; mask, eyes and ears")),
          new Caution(
              "Use.",
              "What is made from this sheet is for bouldering only, over mats: no rope, no belay."));
  }
}
