package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Contours;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.sheets.CutOut;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.WorkedFace.Order;
import plycrag.units.Tape;
import plycrag.wall.machine.Controller;
import plycrag.wall.machine.Controller.ToolChange;
import plycrag.wall.machine.Machine;
import plycrag.wall.machine.MachineLimits.Travel;
import plycrag.wall.machine.Tool;
import plycrag.wall.machine.ToolBox;

/** The machine reaches all over every sheet, and from below it to above the clamps. */
public final class WithinTravel implements Rule {
  @Override
  public String name() {
    return "machine-travel";
  }

  @Override
  public String promise() {
    return "The machine's travel, where it is told, reaches all over every sheet that it works.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    Machine machine = layout.wall().machine();
    Travel travel = machine.equipment().limits().travel();
    Tape tape = layout.wall().tape();
    List<Finding> findings = new ArrayList<>();
    Optional<Tool> cutter = ToolBox.cutter(machine, layout.wall().sheet().thickness());
    for (LaidSheet sheet : layout.sheets()) {
      Envelope box = worked(layout, sheet, cutter);
      across(sheet.mark(), box.getWidth(), travel.x(), "across", tape).ifPresent(findings::add);
      across(sheet.mark(), box.getHeight(), travel.y(), "up", tape).ifPresent(findings::add);
    }
    boolean turned = layout.faces().stream().anyMatch(face -> face.order() == Order.FIRST);
    double pins = turned ? machine.work().pins().depth() : 0;
    double height =
        layout.wall().sheet().thickness()
            + machine.heights().breakthrough()
            + pins
            + highest(machine);
    height(height, travel.z(), tape).ifPresent(findings::add);
    return findings;
  }

  /** Above the sheet: the safe height, or where tools are changed, mm. */
  private static double highest(Machine machine) {
    Controller controller = machine.equipment().controller();
    double safe = machine.heights().safe();
    return controller.toolChange() == ToolChange.PROGRAM
        ? safe
        : Math.max(safe, controller.changePlace().height());
  }

  /** The sheet and the ways round its pieces; null where no tool goes. */
  private static Envelope worked(Layout layout, LaidSheet sheet, Optional<Tool> cutter) {
    Envelope box = new Envelope();
    cutter.ifPresent(
        tool ->
            CutOut.of(sheet, layout.offcuts())
                .forEach(one -> box.expandToInclude(way(one, sheet, tool))));
    if (!box.isNull() || !sheet.holes().isEmpty()) {
      box.expandToInclude(sheet.area());
    }
    return box;
  }

  private static Envelope way(CutOut one, LaidSheet sheet, Tool tool) {
    return new Contours(one.area(), sheet.area(), tool.diameter() / 2).box();
  }

  private Optional<Finding> across(
      String sheet, double size, Optional<Double> travel, String way, Tape tape) {
    return travel
        .filter(reach -> Tolerance.isLess(reach, size))
        .map(
            reach ->
                error()
                    .finding(
                        sheet,
                        "",
                        new Measure(reach, size),
                        "sheet "
                            + sheet
                            + " needs "
                            + tape.size(size)
                            + " "
                            + way
                            + " as it lies on the machine, which moves "
                            + tape.size(reach),
                        "take smaller sheets ([sheet] length, width), or a larger machine"));
  }

  private Optional<Finding> height(double height, Optional<Double> travel, Tape tape) {
    return travel
        .filter(reach -> Tolerance.isLess(reach, height))
        .map(
            reach ->
                error()
                    .finding(
                        "",
                        "",
                        new Measure(reach, height),
                        "from below the sheet to the highest place it is "
                            + tape.size(height)
                            + ", and the machine moves "
                            + tape.size(reach),
                        "lower the safe height ([machine] safe-height), if the clamps allow it, or where tools are"
                            + " changed (change-height)"));
  }

  private WholeWall error() {
    return new WholeWall(name(), Severity.ERROR);
  }
}
