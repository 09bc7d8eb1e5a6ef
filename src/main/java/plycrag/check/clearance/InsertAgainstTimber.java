package plycrag.check.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.geometry.Distances;
import plycrag.layout.Axis;
import plycrag.layout.FacetLayout;
import plycrag.layout.Insert;
import plycrag.layout.InsertSurroundings;
import plycrag.layout.Layout;
import plycrag.layout.Member;
import plycrag.layout.Obstacle;

/**
 * An insert's flange and the bolt zone behind it keep clear of the timber; of the two, the one that
 * falls shorter is reported.
 */
public final class InsertAgainstTimber implements Rule {

  @Override
  public String name() {
    return "insert-timber";
  }

  @Override
  public String promise() {
    return "Every insert's flange, and the space its bolt may reach, is clear of the timber behind.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Member> members =
        layout.members().stream().collect(Collectors.toMap(Member::mark, Function.identity()));
    for (FacetLayout facet : layout.facets()) {
      InsertSurroundings surroundings = facet.surroundings();
      Report report = new Report(name(), facet.facet().name(), layout.wall().tape());
      for (Insert insert : facet.inserts()) {
        for (Obstacle obstacle : surroundings.timber(insert.centre())) {
          Member member = members.get(obstacle.mark());
          String move = move(insert, member, obstacle, facet, report);
          findings.add(finding(insert, member, obstacle, move, report));
        }
      }
    }
    return findings;
  }

  private static Finding finding(
      Insert insert, Member member, Obstacle obstacle, String move, Report report) {
    boolean bolt = obstacle.kind() == Obstacle.Kind.BOLT_AND_TIMBER;
    String other = member.role().word() + " " + member.mark();
    return report.error(
        new Report.Thing(insert.mark(), insert.centre()),
        member.mark(),
        obstacle.measure(),
        "the "
            + (bolt ? "bolt zone" : "flange")
            + " of insert "
            + insert.mark()
            + " "
            + report.standing(obstacle.measure(), other),
        move);
  }

  /**
   * Timber that slants, or that belongs to another facet, is left behind by going from the fold.
   */
  private static String move(
      Insert insert, Member member, Obstacle obstacle, FacetLayout facet, Report report) {
    if (member.hasSquareSides() && member.isUpOrLevel() && facet.members().contains(member)) {
      double centre = Distances.from(insert.centre(), member.footprint());
      double needed = centre + obstacle.measure().shortfall();
      return InsertMove.clearOf(member, insert, needed).words(insert, member, report.tape());
    }
    if (facet.members().contains(member) && !member.isUpOrLevel()) {
      return InsertMove.off(member, insert, obstacle.measure().shortfall())
          .words(insert, report.tape());
    }
    boolean lower = insert.centre().getY() < facet.facet().length() / 2;
    double away = obstacle.measure().shortfall();
    return new InsertMove(Axis.UP, lower ? away : -away).words(insert, report.tape());
  }
}
