package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Report;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.wall.Facet;
import plycrag.wall.Fold;

/**
 * Where a facet stands on another, timber of both lies along the fold: where they meet over next to
 * nothing, the timber of one comes together before it gets there.
 */
public final class StandsOnTimber implements Rule {

  @Override
  public String name() {
    return "facet-stands";
  }

  @Override
  public String promise() {
    return "Where a facet stands on another, timber of both lies along the fold.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    return layout.facets().stream()
        .filter(upper -> upper.facet().standsOnFacet())
        .flatMap(upper -> finding(upper, layout).stream())
        .toList();
  }

  private Optional<Finding> finding(FacetLayout upper, Layout layout) {
    List<Fold> folds = upper.facet().folds(Fold.Place.BELOW);
    String lower = folds.get(0).other();
    List<String> marks = upper.members().stream().map(Member::mark).toList();
    boolean isHeld =
        layout.facets().stream()
            .filter(facet -> facet.facet().name().equals(lower))
            .flatMap(facet -> facet.joints().stream())
            .anyMatch(joint -> marks.contains(joint.second()));
    double shared = folds.stream().mapToDouble(Fold::length).sum();
    return isHeld ? Optional.empty() : Optional.of(finding(upper.facet(), lower, shared, layout));
  }

  private Finding finding(Facet upper, String lower, double shared, Layout layout) {
    Report report = new Report(name(), upper.name(), layout.wall().tape());
    return report.error(
        new Report.Thing(upper.name(), Shapes.point(upper.width() / 2, 0)),
        lower,
        new Measure(0, 0),
        "facet "
            + upper.name()
            + (Tolerance.isSome(shared)
                ? " stands on " + report.tape().text(shared) + " of facet " + lower
                : " stands beside the upper side of facet " + lower)
            + ", along which no timber of both lies",
        "let them meet over more ([[facet]] outline, width or shift)");
  }
}
