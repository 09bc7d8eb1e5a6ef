package plycrag.check.clearance;

import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Recess;

/** An insert's barrel is shorter than the sheet is thick where its flange bears on it. */
public final class BarrelAgainstThickness implements Rule {
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
    Inserts inserts = layout.wall().inserts();
    double thickness = layout.wall().sheet().thickness();
    double under = inserts.under(thickness);
    Measure measure =
        new Measure(under - inserts.body().barrel(), layout.wall().clearance().barrelToFace());
    if (!Tolerance.isSome(measure.shortfall())) {
      return List.of();
    }
    Tape tape = layout.wall().tape();
    String sheet = "a sheet of " + tape.size(thickness);
    return List.of(
        new WholeWall(name(), Severity.ERROR)
            .finding(
                "",
                "",
                measure,
                "a barrel of "
                    + tape.size(inserts.body().barrel())
                    + " in "
                    + inserts
                        .body()
                        .recess()
                        .map(recess -> recessed(recess, tape) + sheet)
                        .orElse(sheet)
                    + (measure.found() < 0 ? " stands out by " : " leaves ")
                    + tape.size(Math.abs(measure.found()))
                    + (measure.found() < 0 ? " beyond" : " to")
                    + " the climbing face; "
                    + tape.size(measure.required())
                    + " must remain",
                suggestion(inserts, under - measure.required(), tape)));
  }

  private static String recessed(Recess recess, Tape tape) {
    return "a recess of " + tape.size(recess.depth()) + " in ";
  }

  /**
   * What would do.
   *
   * @param room for a barrel, mm
   */
  private static String suggestion(Inserts inserts, double room, Tape tape) {
    double shallower =
        tape.snapDown(
            room
                - inserts.body().barrel()
                + inserts.body().recess().map(Recess::depth).orElse(0.0));
    double most = tape.snapDown(room);
    String barrel =
        "choose an insert with a barrel of at most "
            + tape.text(most)
            + " "
            + Cure.length("[inserts] barrel", most, tape).words();
    if (most <= 0) {
      return "choose thicker sheets ([sheet] thickness)";
    }
    return inserts.body().recess().isPresent() && shallower > 0
        ? barrel
            + ", or make recesses at most "
            + tape.text(shallower)
            + " deep "
            + Cure.length("[inserts] recess-depth", shallower, tape).words()
        : barrel;
  }
}
