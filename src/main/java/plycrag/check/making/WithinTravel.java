package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.LaidSheet;
import plycrag.layout.Layout;
import plycrag.layout.nest.StockSheet;
import plycrag.params.MachineLimits.Travel;
import plycrag.params.MachineParameters;
import plycrag.units.Tape;

/** The machine reaches all over every sheet, and from below it to above the clamps. */
public final class WithinTravel implements Rule {
  private static final double TOLERANCE = 1e-6;

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
    MachineParameters machine = layout.wall().machine();
    Travel travel = machine.limits().travel();
    Tape tape = layout.wall().tape();
    List<Finding> findings = new ArrayList<>();
    for (LaidSheet sheet : layout.sheets()) {
      if (!sheet.holes().isEmpty()) {
        StockSheet stock = sheet.stock();
        across(stock.mark(), stock.width(), travel.x(), "across", tape).ifPresent(findings::add);
        across(stock.mark(), stock.height(), travel.y(), "up", tape).ifPresent(findings::add);
      }
    }
    double height =
        layout.wall().sheet().thickness() + machine.breakthrough() + machine.safeHeight();
    height(height, travel.z(), tape).ifPresent(findings::add);
    return findings;
  }

  private Optional<Finding> across(
      String sheet, double size, Optional<Double> travel, String way, Tape tape) {
    return travel
        .filter(reach -> reach < size - TOLERANCE)
        .map(
            reach ->
                error()
                    .finding(
                        sheet,
                        "",
                        new Measure(reach, size),
                        "sheet "
                            + sheet
                            + " is "
                            + tape.size(size)
                            + " "
                            + way
                            + " as it lies on the machine, which moves "
                            + tape.size(reach),
                        "take smaller sheets, or a larger machine"));
  }

  private Optional<Finding> height(double height, Optional<Double> travel, Tape tape) {
    return travel
        .filter(reach -> reach < height - TOLERANCE)
        .map(
            reach ->
                error()
                    .finding(
                        "",
                        "",
                        new Measure(reach, height),
                        "from below the sheet to the safe height it is "
                            + tape.size(height)
                            + ", and the machine moves "
                            + tape.size(reach),
                        "lower the safe height ([machine] safe-height), if the clamps allow it"));
  }

  private WholeWall error() {
    return new WholeWall(name(), Severity.ERROR);
  }
}
