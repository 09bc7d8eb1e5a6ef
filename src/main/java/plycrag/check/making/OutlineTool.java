package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.geometry.Contours;
import plycrag.layout.Layout;
import plycrag.layout.sheets.CutOut;
import plycrag.layout.sheets.LaidSheet;
import plycrag.units.Tape;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** Where pieces are cut out, an end mill reaches and gets beside every side of them. */
public final class OutlineTool implements Rule {

  @Override
  public String name() {
    return "outline-tool";
  }

  @Override
  public String promise() {
    return "Where pieces are cut out, an end mill reaches through and goes round them; corners that"
        + " stay round are told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Machine machine = layout.wall().machine();
    if (!machine.work().routing().cuts()) {
      return List.of();
    }
    double depth =
        machine
            .work()
            .routing()
            .depth(layout.wall().sheet().thickness(), machine.heights().breakthrough());
    Optional<Tool> tool = ToolBox.of(machine, List.of()).forOutlines(depth);
    return tool.map(cutter -> around(layout, cutter))
        .orElseGet(() -> List.of(noTool(layout.wall().tape().size(depth))));
  }

  private Finding noTool(String depth) {
    return finding(
        Severity.ERROR,
        "",
        "pieces are to be cut out, and no end mill is told that reaches "
            + depth
            + " deep and may turn at its speed",
        "add a [[tool]] of kind end-mill that does, or saw them out ([machine] outlines = \"none\")");
  }

  private List<Finding> around(Layout layout, Tool cutter) {
    List<Finding> findings = new ArrayList<>();
    for (LaidSheet sheet : layout.sheets()) {
      List<CutOut> all = CutOut.of(sheet, layout.offcuts());
      for (CutOut one : all) {
        around(sheet, all, one, cutter, layout.wall().tape()).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> around(
      LaidSheet sheet, List<CutOut> all, CutOut one, Tool cutter, Tape tape) {
    Contours contours = new Contours(one.area(), sheet.area(), cutter.diameter() / 2);
    String piece = one.mark();
    if (!contours.areFree()) {
      return Optional.of(tooWide(piece, cutter, tape));
    }
    if (!contours.stayNear()) {
      return Optional.of(tooSharp(piece));
    }
    return all.stream()
        .filter(other -> !other.equals(one) && !contours.spares(other.area()))
        .findFirst()
        .map(other -> tooNear(piece, other.mark(), cutter, tape))
        .or(() -> round(piece, contours.roundCorners(), tape.size(cutter.diameter() / 2)));
  }

  private Finding tooWide(String piece, Tool cutter, Tape tape) {
    return finding(
        Severity.ERROR,
        piece,
        cutter.name()
            + " is "
            + tape.size(cutter.diameter())
            + " wide and does not get round piece "
            + piece
            + " everywhere",
        "take a narrower end mill, or widen the notch or opening");
  }

  private Finding tooSharp(String piece) {
    return finding(
        Severity.ERROR,
        piece,
        "a corner of piece "
            + piece
            + " is so sharp that the end mill would go far beyond the sheet to get round it",
        "cut the corner's tip off, or saw the pieces out ([machine] outlines = \"none\")");
  }

  private Finding tooNear(String piece, String other, Tool cutter, Tape tape) {
    return finding(
        Severity.ERROR,
        piece,
        cutter.name()
            + " is "
            + tape.size(cutter.diameter())
            + " wide and would cut into piece "
            + other
            + " on its way round piece "
            + piece,
        "set [nesting] cut-with = \"router\" and tool-diameter to the end mill's");
  }

  private Optional<Finding> round(String piece, int corners, String radius) {
    String which = corners == 1 ? " inside corner" : " inside corners";
    return corners == 0
        ? Optional.empty()
        : Optional.of(
            finding(
                Severity.WARNING,
                piece,
                corners + which + " of piece " + piece + " stay round, with a radius of " + radius,
                "square them by hand where something must fit"));
  }

  private Finding finding(Severity severity, String first, String sentence, String suggestion) {
    return new Finding(
        name(), severity, new Place.WholeWall(), first, "", Optional.empty(), sentence, suggestion);
  }
}
