package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.layout.Layout;
import plycrag.wall.Facet;
import plycrag.wall.Zone;

/** Zones lie on their facets, at least in part. */
public final class ZonesFit implements Rule {
  private static final String NAME = "zone-place";

  /** What is smaller is a rounding, mm². */
  private static final double CRUMB = 1;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public String promise() {
    return "Every zone lies on its facet, at least in part.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (Facet facet : layout.wall().facets()) {
      Report report = new Report(NAME, facet.name(), layout.wall().tape());
      for (Zone zone : layout.wall().zones(facet)) {
        if (Shapes.shared(zone.shape(), facet.outline()).getArea() <= CRUMB) {
          findings.add(finding(zone, facet, report));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Zone zone, Facet facet, Report report) {
    double apart = zone.shape().distance(facet.outline());
    return report.error(
        new Report.Thing(zone.name(), zone.shape().getCentroid()),
        "",
        new Measure(-apart, 0),
        "zone " + zone.name() + " lies beside the face of facet " + facet.name(),
        "move it onto the facet: places are measured from the facet's left and lower edge");
  }
}
