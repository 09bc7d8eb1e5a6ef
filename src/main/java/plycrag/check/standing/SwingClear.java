package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.standing.RunAtAngle;
import plycrag.layout.support.Tether;
import plycrag.units.Decimal;
import plycrag.units.Tape;

/** What swings cuts into nothing at any of its angles, and hangs from what holds it. */
public final class SwingClear implements Rule {
  @Override
  public String name() {
    return "swing-clear";
  }

  @Override
  public String promise() {
    return "A hinged wall cuts into nothing at any of its angles and is held from above.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (int run = 0; run < layout.runs().size(); run++) {
      for (double angle : RunAtAngle.angles(layout, run)) {
        RunAtAngle atAngle = RunAtAngle.of(layout, run, angle);
        for (RunAtAngle.Body moving : atAngle.moving()) {
          for (RunAtAngle.Body still : atAngle.still()) {
            judge(layout, angle, moving, still, findings);
          }
        }
        judgeTethers(layout, angle, findings);
      }
    }
    return findings;
  }

  private void judge(
      Layout layout,
      double angle,
      RunAtAngle.Body moving,
      RunAtAngle.Body still,
      List<Finding> findings) {
    if (moving.solid().overlapsByMoreThan(Tolerance.TOUCH, still.solid())) {
      double depth = moving.solid().overlap(still.solid());
      findings.add(
          new WholeWall(name(), Severity.ERROR)
              .finding(
                  moving.mark(),
                  still.mark(),
                  new Measure(-depth, 0),
                  "at "
                      + degrees(angle)
                      + " "
                      + moving.mark()
                      + " would be "
                      + layout.wall().tape().size(depth)
                      + " deep in "
                      + still.mark(),
                  "leave that angle out ([support] angles), or draw the facet at its least angle"
                      + " ([[facet]] angle)"));
    }
  }

  private void judgeTethers(Layout layout, double angle, List<Finding> findings) {
    for (Tether tether : layout.support().map(one -> one.tethers()).orElse(List.of())) {
      double below = tether.anchor().z() - layout.held(tether, angle).z();
      boolean hangs = tether.task() != Tether.Task.LOCK;
      if (hangs && below < -Tolerance.TOUCH) {
        Tape tape = layout.wall().tape();
        findings.add(
            new WholeWall(name(), Severity.ERROR)
                .finding(
                    tether.mark(),
                    "",
                    new Measure(below, 0),
                    "at "
                        + degrees(angle)
                        + " "
                        + tether.mark()
                        + " is anchored "
                        + tape.text(-below)
                        + " below where it holds the wall",
                    "anchor it higher "
                        + Cure.length("[support] anchor-height", highest(layout), tape).words()
                        + ", or hold the facet further down its slope ([support] attach)"));
      }
    }
  }

  /** As high as what is held ever comes, mm. */
  private static double highest(Layout layout) {
    double highest =
        layout.support().orElseThrow().tethers().stream()
            .flatMap(
                tether ->
                    RunAtAngle.angles(layout, 0).stream()
                        .map(angle -> layout.held(tether, angle).z()))
            .max(Double::compare)
            .orElseThrow();
    return layout.wall().tape().snapUp(highest);
  }

  private static String degrees(double angle) {
    return Decimal.of(angle, 2) + "°";
  }
}
