package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.units.Tape;
import plycrag.wall.Wall;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.ToolBox;

/**
 * A sheet that is worked on both faces has two pins to turn over on, and a tool for their holes.
 */
public final class PinsFit implements Rule {

  @Override
  public String name() {
    return "registration-pin";
  }

  @Override
  public String promise() {
    return "Sheets that are worked on both faces have room for two pins and a tool for their holes.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    layout.faces().stream()
        .filter(face -> face.order() == Order.FIRST)
        .forEach(face -> findings.addAll(findings(face.sheet(), layout)));
    return findings.stream().distinct().toList();
  }

  private List<Finding> findings(LaidSheet back, Layout layout) {
    List<MachinedHole> pins = back.holes(Kind.PIN);
    if (pins.isEmpty()) {
      return List.of(noRoom(back, layout.wall()));
    }
    Machine machine = layout.wall().machine();
    MachinedHole pin = pins.get(0);
    double reach = pin.bore().depth() + machine.heights().breakthrough();
    ToolBox tools = ToolBox.of(machine, layout.bores());
    return pin.tool(tools, reach).isPresent()
        ? List.of()
        : List.of(noTool(pin, reach, layout.wall().tape()));
  }

  private Finding noRoom(LaidSheet back, Wall wall) {
    return error(
        "sheet "
            + back.mark()
            + " is worked on both faces, and its upright middle line has no room for two pins of "
            + wall.tape().size(wall.machine().work().pins().diameter())
            + " beside the pieces",
        margins(back, wall)
            + oneFace(wall)
            + "lay the sheets with their backs up "
            + Cure.word("[nesting] face-up", "back").words());
  }

  /**
   * What would leave room, unless a piece fills its sheet either way, which is laid at its edge.
   */
  private static String margins(LaidSheet back, Wall wall) {
    double margin = wall.tape().snapUp(WorkedFace.pinMargin(wall));
    boolean fills =
        back.pieces().stream()
            .map(LaidPiece::box)
            .anyMatch(
                box ->
                    box.getHeight() > back.stock().height() - 2 * margin
                        || box.getWidth() > back.stock().width() - 2 * margin);
    String left = wall.tape().text(margin);
    return fills
        ? "take sheets on which the pieces leave "
            + left
            + " at both edges ([sheet] width, or a [[stock-sheet]]), "
        : "leave "
            + left
            + " at the sheets' edges "
            + Cure.length("[nesting] edge-trim", margin, wall.tape()).words()
            + ", ";
  }

  /** Marks can go to the other face; a recess is in the back or nowhere. */
  private static String oneFace(Wall wall) {
    return wall.inserts().body().recess().isPresent()
        ? "or "
        : "engrave marks in the face that lies up ([machine] marks), or ";
  }

  private Finding noTool(MachinedHole pin, double reach, Tape tape) {
    return error(
        "holes of "
            + tape.size(pin.bore().diameter())
            + " for pins go "
            + tape.size(reach)
            + " deep, and no tool makes them at a speed that it bears",
        "add a [[tool]] with diameter "
            + tape.size(pin.bore().diameter())
            + " and that length, or change [machine] pin-diameter or pin-depth");
  }

  private Finding error(String sentence, String suggestion) {
    return new WholeWall(name(), Severity.ERROR).finding(sentence, suggestion);
  }
}
