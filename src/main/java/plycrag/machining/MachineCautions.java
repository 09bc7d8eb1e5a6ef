package plycrag.machining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plycrag.document.Book.Block;
import plycrag.document.Book.Caution;
import plycrag.document.Book.Checklist;
import plycrag.units.Decimal;
import plycrag.wall.machine.MachineLimits;

/** What keeps the person at the machine, the sheet and the tool whole. */
final class MachineCautions {
  private MachineCautions() {}

  /**
   * All of them.
   *
   * @param raised by how much Z zero is raised for the dry run, with its unit
   * @param speeds at which the programs have the spindle turn, rpm
   */
  static List<Block> of(String raised, List<Double> speeds, MachineLimits limits) {
    List<Block> all = new ArrayList<>();
    speeds.stream()
        .filter(limits::mayBeTooSlow)
        .min(Comparator.naturalOrder())
        .map(MachineCautions::slow)
        .ifPresent(all::add);
    all.addAll(others(raised));
    return all;
  }

  private static Block slow(double speed) {
    return new Caution(
        "Spindle.",
        "These programs turn at "
            + Decimal.of(speed, 0)
            + " rpm, which suits a boring bit; most routers do not turn so slowly. Tell how slowly"
            + " yours does ([machine] least-speed) and the tools that it holds ([[tool]] kind ="
            + " \"end-mill\", which bores these holes in spirals), and make the programs anew.");
  }

  private static List<Block> others(String raised) {
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
