package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.standing.Raising;
import plycrag.units.Tape;

/**
 * A frame that is built on the floor can be tilted up under the ceiling. Its farthest corner runs
 * round the edge that it is tilted up on; where the ceiling falls toward the climber, the corner is
 * nearest to it where the circle is as steep, so that the diagonal over the cosine of the pitch
 * decides. Where it falls along the wall, each corner is held against it where that corner is.
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
    for (List<FacetLayout> run : layout.runs()) {
      Raising.need(layout, run)
          .filter(need -> need.shortfall() > Tolerance.TOUCH)
          .ifPresent(need -> findings.add(tooLow(layout, run, need)));
    }
    return findings;
  }

  private Finding tooLow(Layout layout, List<FacetLayout> run, Raising.Need need) {
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
                + tape.text(tape.snapDown(Raising.longest(layout, run)))
                + " up the slope ("
                + run.get(0).facet().lengthKey()
                + "), whose frames are bolted together";
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            "",
            "",
            new Measure(-need.shortfall(), 0),
            "the frame needs "
                + tape.text(tape.snapUp(need.needed()))
                + " along its diagonal, and it cannot be tilted up under a ceiling of "
                + tape.text(tape.snapDown(need.ceiling())),
            suggestion);
  }
}
