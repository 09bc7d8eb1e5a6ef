package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.sheets.MachinedHole;
import plycrag.units.Tape;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** Every hole can be made with a tool that the machine holds, at a speed that the tool bears. */
public final class HoleTools implements Rule {

  @Override
  public String name() {
    return "hole-tool";
  }

  @Override
  public String promise() {
    return "Every hole has a tool that fits, reaches and may turn at its speed.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Machine machine = layout.wall().machine();
    TreeMap<Double, List<MachinedHole>> byDiameter =
        layout.holes().stream()
            .filter(hole -> !hole.isSunk())
            .collect(
                Collectors.groupingBy(
                    hole -> hole.bore().diameter(), TreeMap::new, Collectors.toList()));
    Judge judge = new Judge(ToolBox.of(machine, byDiameter.keySet()), layout.wall().tape(), name());
    return byDiameter.values().stream()
        .flatMap(holes -> judge.finding(holes, deepest(holes, layout)).stream())
        .toList();
  }

  /** How far a tool goes below the sheet's top for the deepest of them, mm. */
  private static double deepest(List<MachinedHole> holes, Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    double depth = holes.stream().mapToDouble(hole -> hole.bore().depth()).max().orElse(0);
    return depth >= thickness ? depth + layout.wall().machine().heights().breakthrough() : depth;
  }

  /** Judges the holes of one diameter. */
  private static final class Judge {
    private final ToolBox tools;
    private final Tape tape;
    private final String rule;

    /**
     * Judges for one wall.
     *
     * @param tools there are
     * @param tape what lengths are told with
     * @param rule the rule's name
     */
    Judge(ToolBox tools, Tape tape, String rule) {
      this.tools = tools;
      this.tape = tape;
      this.rule = rule;
    }

    Optional<Finding> finding(List<MachinedHole> holes, double depth) {
      double diameter = holes.get(0).bore().diameter();
      if (tools.forHole(diameter, depth).isPresent()) {
        return Optional.empty();
      }
      String what =
          holes.size() + (holes.size() == 1 ? " hole" : " holes") + " of " + tape.size(diameter);
      List<Tool> candidates = tools.candidates(diameter);
      return Optional.of(
          candidates.isEmpty() ? noTool(what, diameter) : unfit(what, candidates.get(0), depth));
    }

    private Finding noTool(String what, double diameter) {
      return error(
          what + ": no drill of that diameter is told, and no end mill narrow enough to bore them",
          "add a [[tool]] with diameter " + tape.size(diameter) + ", or a narrower end mill");
    }

    private Finding unfit(String what, Tool tool, double depth) {
      return ToolBox.reaches(tool, depth) ? tooFast(what, tool) : tooShort(what, tool, depth);
    }

    private Finding tooShort(String what, Tool tool, double depth) {
      return error(
          what
              + ": "
              + tool.name()
              + " reaches "
              + tape.size(tool.shape().length())
              + " deep and "
              + tape.size(depth)
              + " is needed",
          "take a longer tool, or a smaller [machine] breakthrough");
    }

    private Finding tooFast(String what, Tool tool) {
      return error(
          what + ": " + DrivenSpeed.words(tool, tools.spindle()),
          "set a speed that both allow ([[tool]] speed), or add an end mill to bore the holes");
    }

    private Finding error(String sentence, String suggestion) {
      return new Finding(
          rule,
          Severity.ERROR,
          new Place.WholeWall(),
          "",
          "",
          Optional.empty(),
          sentence,
          suggestion);
    }
  }
}
