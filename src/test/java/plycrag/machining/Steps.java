package plycrag.machining;

import java.util.ArrayList;
import java.util.List;
import plycrag.document.DrillProgram;
import plycrag.document.Move;

/** A program move by move, without cycles. */
final class Steps {
  private Steps() {}

  static List<Move> of(DrillProgram program) {
    List<Move> steps = new ArrayList<>();
    double z = Double.NaN;
    for (Move move : program.moves()) {
      if (move instanceof Move.RapidZ rapid) {
        z = rapid.z();
      }
      if (move instanceof Move.DrillCycle cycle) {
        steps.addAll(cycle.steps(z));
        z = cycle.retract();
      } else {
        steps.add(move);
      }
    }
    return steps;
  }
}
