package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.SpatialIndex;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Member;

/** No two members take the same space. */
public final class MembersOverlap implements Rule {
  private static final double TOLERANCE = 0.01;

  @Override
  public String name() {
    return "members-overlap";
  }

  @Override
  public String promise() {
    return "No two members of the frame take the same space.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    for (FacetLayout facet : layout.facets()) {
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      SpatialIndex<Member> index = new SpatialIndex<>(facet.members(), Member::box);
      for (Member member : facet.members()) {
        for (Member other : index.near(member.box(), 0)) {
          if (member.mark().compareTo(other.mark()) < 0) {
            addOverlap(member, other, report, findings);
          }
        }
      }
    }
    return findings;
  }

  private static void addOverlap(
      Member member, Member other, Report report, List<Finding> findings) {
    Envelope shared = member.box().intersection(other.box());
    double depth = Math.min(shared.getWidth(), shared.getHeight());
    if (depth > TOLERANCE) {
      Measure measure = new Measure(-depth, 0);
      findings.add(
          report.error(
              new Report.Thing(member.mark(), Shapes.point(shared.centre().x, shared.centre().y)),
              other.mark(),
              measure,
              member.mark() + " " + report.standing(measure, other.mark()),
              "make the facet larger or smaller, the studs further apart or the sheets' least width"
                  + " greater"));
    }
  }
}
