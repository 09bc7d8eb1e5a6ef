package plycrag.check.making;

import java.util.List;
import java.util.stream.Stream;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Tape;

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
    Stream<Finding> ofFrames =
        layout.facets().stream()
            .flatMap(
                facet ->
                    facet.members().stream()
                        .filter(member -> Tolerance.isMore(member.length(), longest))
                        .map(member -> finding(member, facet, layout)));
    Stream<Finding> ofSupport =
        layout.standing().stream()
            .map(PlacedMember::member)
            .filter(member -> Tolerance.isMore(member.length(), longest))
            .map(member -> finding(member, layout));
    return Stream.concat(ofFrames, ofSupport).toList();
  }

  private Finding finding(Member member, FacetLayout facet, Layout layout) {
    Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
    double longest = layout.wall().stock().longestMember();
    Measure measure = new Measure(longest - member.length(), 0);
    return report.error(
        new Report.Thing(member.mark(), member.footprint().getCentroid()),
        "",
        measure,
        sentence(member, layout),
        member.role() == MemberRole.STUD
            ? "make the facet shorter, state a longer length under [stock], or have long studs"
                + " spliced ([frame] long-studs)"
            : "make the facet shorter, or state a longer length under [stock]");
  }

  private Finding finding(Member member, Layout layout) {
    double longest = layout.wall().stock().longestMember();
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            member.mark(),
            "",
            new Measure(longest - member.length(), 0),
            sentence(member, layout),
            "hold the wall nearer to it ([support]), or state a longer length under [stock]");
  }

  private static String sentence(Member member, Layout layout) {
    Tape tape = layout.wall().tape();
    return member.role().word()
        + " "
        + member.mark()
        + " is "
        + tape.text(member.length())
        + " long, and the longest that a bought stick yields is "
        + tape.text(layout.wall().stock().longestMember());
  }
}
