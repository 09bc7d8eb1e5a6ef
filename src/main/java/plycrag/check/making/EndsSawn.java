package plycrag.check.making;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.frame.EndCut;
import plycrag.layout.frame.Member;
import plycrag.units.Decimal;

/** Every end can be cut on a mitre saw, or whoever cuts is told before. */
public final class EndsSawn implements Rule {
  /** How far the larger of such saws turn on their tables, degrees (common practice, no source). */
  private static final double TURN = 60;

  /** How far their blades tilt, degrees (common practice, no source). */
  private static final double TILT = 48;

  @Override
  public String name() {
    return "saw-reach";
  }

  @Override
  public String promise() {
    return "Every end of timber can be cut on a mitre saw, or is told.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    add(layout, EndCut::mitre, TURN, "a mitre saw turns", findings);
    add(layout, EndCut::tilt, TILT, "the blade of a mitre saw tilts", findings);
    return findings;
  }

  private void add(
      Layout layout,
      ToDoubleFunction<EndCut> angle,
      double most,
      String saw,
      List<Finding> findings) {
    List<Member> beyond =
        layout.members().stream().filter(member -> worst(member, angle) > most).toList();
    if (beyond.isEmpty()) {
      return;
    }
    double worst = beyond.stream().mapToDouble(member -> worst(member, angle)).max().orElseThrow();
    String marks = String.join(", ", beyond.stream().map(Member::mark).toList());
    findings.add(
        new WholeWall(name(), Severity.NOTE)
            .finding(
                "an end of "
                    + marks
                    + " is cut up to "
                    + Decimal.of(worst, 1)
                    + "° from square, which is further than "
                    + saw,
                "mark "
                    + marks
                    + " on all four sides, cut outside the line with a hand saw or a circular saw,"
                    + " the timber clamped, and plane the end true"));
  }

  private static double worst(Member member, ToDoubleFunction<EndCut> angle) {
    return Math.max(
        Math.abs(angle.applyAsDouble(member.lowEnd())),
        Math.abs(angle.applyAsDouble(member.highEnd())));
  }
}
