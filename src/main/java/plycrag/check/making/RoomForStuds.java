package plycrag.check.making;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** A facet is long enough for studs between the plates at its edges. */
public final class RoomForStuds implements Rule {

  @Override
  public String name() {
    return "facet-too-short";
  }

  @Override
  public String promise() {
    return "Every facet is long enough for its frame.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    return layout.facets().stream()
        .filter(facet -> !facet.hasStuds())
        .map(facet -> finding(facet, layout.wall().tape()))
        .toList();
  }

  private Finding finding(FacetLayout layout, Tape tape) {
    Facet facet = layout.facet();
    return new Report(name(), facet.name(), tape)
        .error(
            new Report.Thing(facet.name(), Shapes.point(0, facet.length() / 2)),
            "",
            new Measure(0, 0),
            (facet.isCutOff()
                    ? "the wall beside facet " + facet.name() + " cuts off so much of it that"
                    : "facet " + facet.name() + " is " + tape.text(facet.length()) + " long, and")
                + " the plates at its edges leave no room for studs between them",
            facet.isCutOff()
                ? "let the walls lean more alike or turn less toward each other ([[facet]] angle,"
                    + " turn)"
                : "make it longer ("
                    + facet.lengthKey()
                    + "), its folds less sharp ([[facet]] angle) or the timber less deep ([frame]"
                    + " section)");
  }
}
