package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.layout.Layout;
import plycrag.layout.support.SupportPart;
import plycrag.wall.Facet;

/** The support holds every facet, in both directions, by something that can bear it. */
public final class SupportHolds implements Rule {
  @Override
  public String name() {
    return "support-holds";
  }

  @Override
  public String promise() {
    return "A support holds every facet, along the wall and across it, by what can be fixed to.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    if (layout.support().isPresent()) {
      for (SupportPart part : layout.support().get().parts()) {
        findings.addAll(new PartHolds(name(), layout, part).findings());
        findings.addAll(new HeldByBuilding(name(), layout, part).findings());
      }
      unsupported(layout, findings);
    }
    return findings;
  }

  /** Facets that nothing is told for, where others are held. */
  private void unsupported(Layout layout, List<Finding> findings) {
    for (Facet facet : layout.wall().facets()) {
      if (layout.wall().support(facet).isEmpty()) {
        findings.add(
            new WholeWall(name(), Severity.WARNING)
                .finding(
                    "nothing is told that holds facet "
                        + facet.name()
                        + ", and other facets have a support",
                    "tell what holds it ([facet.support] kind), or what holds all that have none"
                        + " of their own ([support] kind)"));
      }
    }
  }
}
