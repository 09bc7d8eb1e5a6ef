package plycrag.check.making;

import java.util.List;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;

/** Every member can be cut from a length that is sold. */
public final class MemberWithinStock implements Rule {
  @Override
  public String name() {
    return "member-stock";
  }

  @Override
  public String promise() {
    return "Every member can be cut from a length that is sold.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    double longest = layout.wall().stock().longestMember();
    return layout.facets().stream()
        .flatMap(
            facet ->
                facet.members().stream()
                    .filter(member -> Tolerance.isMore(member.length(), longest))
                    .map(member -> finding(member, facet, layout)))
        .toList();
  }

  private Finding finding(Member member, FacetLayout facet, Layout layout) {
    Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
    double longest = layout.wall().stock().longestMember();
    Measure measure = new Measure(longest - member.length(), 0);
    return report.error(
        new Report.Thing(member.mark(), member.footprint().getCentroid()),
        "",
        measure,
        member.role().word()
            + " "
            + member.mark()
            + " is "
            + report.tape().text(member.length())
            + " long, and the longest that a bought stick yields is "
            + report.tape().text(longest),
        member.role() == MemberRole.STUD
            ? "make the facet shorter, state a longer length under [stock], or have long studs"
                + " spliced ([frame] long-studs)"
            : "make the facet shorter, or state a longer length under [stock]");
  }
}
