package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.sheets.CountersinkDepth;
import plycrag.layout.sheets.MachinedHole;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.machine.ClearanceHoles;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** Where heads of screws are let in, a tool fits them, and enough of the sheet stays below. */
public final class Countersinks implements Rule {

  @Override
  public String name() {
    return "countersink";
  }

  @Override
  public String promise() {
    return "Heads of screws that a machine lets in have a tool, and enough of the sheet below.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<MachinedHole> sunk = layout.holes().stream().filter(MachinedHole::isSunk).toList();
    if (sunk.isEmpty()) {
      return List.of();
    }
    Machine machine = layout.wall().machine();
    Judge judge =
        new Judge(
            machine.work().screwHoles().orElseThrow(),
            new ToolBox(machine.equipment().tools(), machine.equipment().limits().spindle()),
            layout.wall().tape(),
            new WholeWall(name(), Severity.ERROR));
    List<Finding> findings = new ArrayList<>();
    boolean hidden =
        layout.sheets().stream()
            .anyMatch(
                sheet ->
                    sheet.holes().stream().anyMatch(hole -> hole.bore().side() != sheet.faceUp()));
    if (hidden) {
      findings.add(judge.wrongFace());
    }
    findings.addAll(judge.findings(sunk.size(), layout.wall().sheet().thickness()));
    return findings;
  }

  /** Judges the heads, which are all alike. */
  private static final class Judge {
    private final ClearanceHoles wanted;
    private final ToolBox tools;
    private final Tape tape;
    private final WholeWall error;

    /**
     * Judges for one wall.
     *
     * @param wanted what is asked for
     * @param tools there are
     * @param tape what lengths are told with
     * @param error what writes findings
     */
    Judge(ClearanceHoles wanted, ToolBox tools, Tape tape, WholeWall error) {
      this.wanted = wanted;
      this.tools = tools;
      this.tape = tape;
      this.error = error;
    }

    private double head() {
      return wanted.sink().orElseThrow().head();
    }

    Finding wrongFace() {
      return error.finding(
          "heads of screws are let in from the climbing side, and the back of the sheets lies up",
          "lay the sheets the other way up ([nesting] face-up = \"front\"), or let no heads in"
              + " ([machine] screw-holes = \"through\")");
    }

    List<Finding> findings(int count, double thickness) {
      if (head() <= wanted.diameter()) {
        return List.of(noWider());
      }
      Optional<Tool> tool = tools.forHead(head());
      return tool.map(one -> fit(one, thickness)).orElseGet(() -> List.of(noTool(count)));
    }

    private Finding noWider() {
      return error.finding(
          "heads of "
              + tape.size(head())
              + " fall through holes of "
              + tape.size(wanted.diameter()),
          "set [machine] screw-head to the head's diameter");
    }

    private Finding noTool(int count) {
      return error.finding(
          Count.of(count, "head")
              + " of "
              + tape.size(head())
              + (count == 1 ? " is" : " are")
              + " to be let in, and no countersink is told that is as wide",
          "add a [[tool]] of kind countersink with diameter "
              + tape.size(head())
              + " or more, or let no heads in ([machine] screw-holes = \"through\")");
    }

    private List<Finding> fit(Tool tool, double thickness) {
      List<Finding> findings = new ArrayList<>();
      double depth = CountersinkDepth.depth(tool.shape().point(), head());
      double allowed = Math.min(wanted.sink().orElseThrow().deepest(), thickness / 2);
      if (depth > allowed) {
        findings.add(tooDeep(tool, depth, allowed));
      }
      if (!ToolBox.reaches(tool, depth)) {
        findings.add(tooShort(tool, depth));
      }
      if (!tools.turns(tool)) {
        findings.add(tooFast(tool));
      }
      return findings;
    }

    private Finding tooDeep(Tool tool, double depth, double allowed) {
      return error.finding(
          tool.name(),
          "",
          new Measure(allowed, depth),
          tool.name()
              + " would go "
              + tape.size(depth)
              + " deep to let heads of "
              + tape.size(head())
              + " in; "
              + tape.size(allowed)
              + " is allowed, and half of the sheet at most",
          "take a blunter countersink ([[tool]] point-angle), screws with smaller heads ([machine]"
              + " screw-head), or allow more ([machine] countersink-depth)");
    }

    private Finding tooShort(Tool tool, double depth) {
      return error.finding(
          tool.name(),
          "",
          new Measure(tool.shape().length(), depth),
          tool.name()
              + " reaches "
              + tape.size(tool.shape().length())
              + " deep and "
              + tape.size(depth)
              + " is needed",
          "take a longer countersink");
    }

    private Finding tooFast(Tool tool) {
      return error.finding(
          DrivenSpeed.words(tool, tools.spindle()), "set a speed that both allow ([[tool]] speed)");
    }
  }
}
