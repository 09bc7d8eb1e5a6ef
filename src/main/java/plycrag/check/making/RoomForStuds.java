package plycrag.check.making;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.MemberRole;

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
        .filter(facet -> facet.members().stream().noneMatch(one -> one.role() == MemberRole.STUD))
        .map(facet -> finding(facet, layout))
        .toList();
  }

  private Finding finding(FacetLayout facet, Layout layout) {
    double length = facet.facet().length();
    Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
    boolean isCutShort = facet.facet().isCutShort();
    return report.error(
        new Report.Thing(facet.facet().name(), Shapes.point(0, length / 2)),
        "",
        new Measure(0, 0),
        "facet "
            + facet.facet().name()
            + " is "
            + report.tape().text(length)
            + " long"
            + (isCutShort ? " where the wall beside it cuts it off" : "")
            + ", and the plates at its edges leave no room for studs between them",
        isCutShort
            ? "let the walls lean more alike or turn less toward each other ([[facet]] angle, turn)"
            : "make it longer ("
                + facet.facet().lengthKey()
                + "), its folds less sharp ([[facet]] angle) or the timber less deep ([frame]"
                + " section)");
  }
}
