package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.LaidSheet;
import plycrag.layout.Layout;
import plycrag.params.RoomParameters.Way;
import plycrag.params.RoomParameters.Ways;

/**
 * Whole sheets pass the narrowest door and stair, upright on edge or flat. Corners on the way are
 * not judged.
 */
public final class BroughtIn implements Rule {
  private static final double TOLERANCE = 0.01;

  @Override
  public String name() {
    return "brought-in";
  }

  @Override
  public String promise() {
    return "Whole sheets pass the narrowest door and stair that are told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    Ways ways = layout.wall().room().ways();
    judge(layout, "door", ways.door(), findings);
    judge(layout, "stair", ways.stair(), findings);
    return findings;
  }

  private void judge(Layout layout, String what, Way way, List<Finding> findings) {
    if (way.width().isEmpty() || way.height().isEmpty()) {
      return;
    }
    double room = Math.max(way.width().get(), way.height().get());
    TreeSet<Double> sides = new TreeSet<>();
    for (LaidSheet sheet : layout.sheets()) {
      sides.add(Math.min(sheet.stock().width(), sheet.stock().height()));
    }
    for (double side : sides) {
      if (side > room + TOLERANCE) {
        findings.add(
            new WholeWall(name(), Severity.WARNING)
                .finding(
                    "",
                    "",
                    new Measure(room - side, 0),
                    "a sheet of "
                        + layout.wall().tape().text(side)
                        + " does not pass the narrowest "
                        + what,
                    "buy narrower sheets, or have them cut before they are brought in"));
      }
    }
  }
}
