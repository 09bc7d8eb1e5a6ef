package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.units.Tape;

/** An insert's barrel is shorter than the sheet is thick. */
public final class BarrelAgainstThickness implements Rule {
  private static final double TOLERANCE = 1e-6;

  @Override
  public String name() {
    return "barrel-thickness";
  }

  @Override
  public String promise() {
    return "The inserts' barrels end inside the sheet.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    double thickness = layout.wall().sheet().thickness();
    double barrel = layout.wall().inserts().barrel();
    Measure measure = new Measure(thickness - barrel, layout.wall().clearance().barrelToFace());
    if (measure.shortfall() <= TOLERANCE) {
      return List.of();
    }
    Tape tape = layout.wall().tape();
    return List.of(
        new WholeWall(name(), Severity.ERROR)
            .finding(
                "",
                "",
                measure,
                "a barrel of "
                    + tape.size(barrel)
                    + " in a sheet of "
                    + tape.size(thickness)
                    + " leaves "
                    + tape.size(measure.found())
                    + " to the climbing face; "
                    + tape.size(measure.required())
                    + " must remain",
                "choose an insert with a barrel of at most "
                    + tape.text(tape.snapDown(thickness - measure.required()))));
  }
}
