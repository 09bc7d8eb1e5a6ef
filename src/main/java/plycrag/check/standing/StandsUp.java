package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Raising;
import plycrag.units.Tape;

/**
 * A frame that is built on the floor can be tilted up under the ceiling. Its farthest corner runs
 * round the edge that it is tilted up on; where the ceiling falls toward the climber, the corner is
 * nearest to it where the circle is as steep, so that the diagonal over the cosine of the pitch
 * decides.
 */
public final class StandsUp implements Rule {
  @Override
  public String name() {
    return "stands-up";
  }

  @Override
  public String promise() {
    return "A frame built on the floor can be tilted up under the ceiling: its diagonal decides.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    if (layout.wall().room().ceiling().height().isPresent()) {
      double ceiling = layout.wall().room().ceiling().height().get();
      for (List<FacetLayout> run : layout.runs()) {
        judge(layout, run, ceiling, findings);
      }
    }
    return findings;
  }

  private void judge(Layout layout, List<FacetLayout> run, double ceiling, List<Finding> findings) {
    if (Raising.passes(layout, run)) {
      return;
    }
    double diagonal = Raising.needed(layout, run);
    Tape tape = layout.wall().tape();
    List<String> tooLong =
        run.stream()
            .filter(facet -> !Raising.passes(layout, List.of(facet)))
            .map(facet -> facet.facet().name())
            .toList();
    String suggestion =
        tooLong.isEmpty() && run.size() > 1
            ? "build the facets by themselves and join them upright at their folds"
            : "build "
                + (run.size() > 1 ? "facet " + String.join(" and ", tooLong) : "it")
                + " in place, member by member, or split it: tell facets of the same angle, none"
                + " longer than "
                + tape.text(tape.snapDown(Raising.longest(layout)))
                + " up the slope ([[facet]] length), whose frames are bolted together";
    findings.add(
        new WholeWall(name(), Severity.WARNING)
            .finding(
                "",
                "",
                new Measure(ceiling - diagonal, 0),
                "the frame needs "
                    + tape.text(tape.snapUp(diagonal))
                    + " along its diagonal, and it cannot be tilted up under a ceiling of "
                    + tape.text(ceiling),
                suggestion));
  }
}
