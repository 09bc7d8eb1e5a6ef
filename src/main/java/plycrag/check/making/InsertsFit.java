package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;

/** A facet without a single insert is hardly what was meant. */
public final class InsertsFit implements Rule {

  @Override
  public String name() {
    return "no-inserts";
  }

  @Override
  public String promise() {
    return "Every facet has inserts.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    return layout.facets().stream()
        .filter(facet -> facet.inserts().isEmpty())
        .map(this::finding)
        .toList();
  }

  private Finding finding(FacetLayout facet) {
    return new Finding(
        name(),
        Severity.WARNING,
        new Place.OnFacet(facet.facet().name(), 0, 0),
        facet.facet().name(),
        "",
        Optional.empty(),
        "no insert fits on facet " + facet.facet().name(),
        "make the setback or the pitch smaller");
  }
}
