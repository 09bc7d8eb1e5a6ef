package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.sheets.EngravedMark;
import plycrag.units.Tape;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.MarkEngraving;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.Tool.Kind;
import plycrag.wall.machine.ToolBox;

/** Where marks are engraved, a tool writes them and every piece has room for its own. */
public final class PiecesMarked implements Rule {

  @Override
  public String name() {
    return "part-mark";
  }

  @Override
  public String promise() {
    return "Marks that a machine engraves have a tool, and every piece has room for its own.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    return layout.wall().machine().work().marks().stream()
        .flatMap(wanted -> findings(layout, wanted).stream())
        .toList();
  }

  private List<Finding> findings(Layout layout, MarkEngraving wanted) {
    List<Finding> findings = new ArrayList<>();
    Machine machine = layout.wall().machine();
    Tape tape = layout.wall().tape();
    if (ToolBox.engraver(machine).isEmpty()) {
      findings.add(noTool(machine, wanted, tape));
    }
    findings.addAll(noRoom(layout));
    return findings;
  }

  private Finding noTool(Machine machine, MarkEngraving wanted, Tape tape) {
    WholeWall error = new WholeWall(name(), Severity.ERROR);
    Optional<Tool> told =
        machine.equipment().tools().stream()
            .filter(tool -> tool.kind() == Kind.ENGRAVER)
            .findFirst();
    if (told.isEmpty()) {
      return error.finding(
          "marks are to be engraved, and no engraver is told",
          "add a [[tool]] of kind engraver, or write marks by hand ([machine] marks = \"none\")");
    }
    Tool tool = told.get();
    return ToolBox.reaches(tool, wanted.depth())
        ? error.finding(
            DrivenSpeed.words(tool, machine.equipment().limits().spindle()),
            "set a speed that both allow ([[tool]] speed)")
        : error.finding(
            tool.name(),
            "",
            new Measure(tool.shape().length(), wanted.depth()),
            tool.name()
                + " reaches "
                + tape.size(tool.shape().length())
                + " deep and marks are "
                + tape.size(wanted.depth())
                + " deep",
            "make marks shallower ([machine] mark-depth)");
  }

  private List<Finding> noRoom(Layout layout) {
    Set<String> marked =
        layout.faces().stream()
            .flatMap(face -> face.marks().stream())
            .map(EngravedMark::piece)
            .collect(Collectors.toSet());
    return layout.sheets().stream()
        .flatMap(sheet -> sheet.pieces().stream())
        .map(laid -> laid.piece().mark())
        .filter(piece -> !marked.contains(piece))
        .map(
            piece ->
                new WholeWall(name(), Severity.WARNING)
                    .finding(
                        "piece " + piece + " has no room for its mark",
                        "make marks smaller ([machine] mark-height), or write it by hand"))
        .toList();
  }
}
