package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.FacetLayout;
import plycrag.layout.Layout;
import plycrag.layout.Raising;
import plycrag.units.Tape;

/** A frame that is built on the floor can be tilted up under the ceiling. */
public final class StandsUp implements Rule {
  private static final double TOLERANCE = 0.01;

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
    double diagonal = Raising.diagonal(layout.wall(), run);
    if (diagonal <= ceiling + TOLERANCE) {
      return;
    }
    Tape tape = layout.wall().tape();
    List<String> tooLong =
        run.stream()
            .filter(facet -> Raising.diagonal(layout.wall(), List.of(facet)) > ceiling)
            .map(facet -> facet.facet().name())
            .toList();
    String suggestion =
        tooLong.isEmpty() && run.size() > 1
            ? "build the facets by themselves and join them upright at their folds"
            : "build "
                + (run.size() > 1 ? "facet " + String.join(" and ", tooLong) : "it")
                + " in place, member by member";
    findings.add(
        new WholeWall(name(), Severity.WARNING)
            .finding(
                "",
                "",
                new Measure(ceiling - diagonal, 0),
                "the frame's diagonal is "
                    + tape.text(tape.snapUp(diagonal))
                    + ", and it cannot be tilted up under a ceiling of "
                    + tape.text(ceiling),
                suggestion));
  }
}
