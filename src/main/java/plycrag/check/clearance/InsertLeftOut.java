package plycrag.check.clearance;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.pattern.Insert;
import plycrag.layout.pattern.Omission;

/** Tells of every insert that was asked for and left out. */
public final class InsertLeftOut implements Rule {

  @Override
  public String name() {
    return "insert-left-out";
  }

  @Override
  public String promise() {
    return "Every insert that was asked for is there, or is listed as left out.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    return layout.facets().stream()
        .flatMap(facet -> facet.omissions().stream().map(omission -> finding(omission, facet)))
        .toList();
  }

  private Finding finding(Omission omission, FacetLayout facet) {
    Insert insert = omission.insert();
    return new Finding(
        name(),
        Severity.WARNING,
        new Place.OnFacet(facet.facet().name(), insert.centre().getX(), insert.centre().getY()),
        insert.mark(),
        omission.mark(),
        Optional.of(omission.measure()),
        "insert " + insert.mark() + " is left out: " + omission.reason(),
        "");
  }
}
