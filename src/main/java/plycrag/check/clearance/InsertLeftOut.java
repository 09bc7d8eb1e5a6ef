package plycrag.check.clearance;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.finding.Finding;
import plycrag.finding.Place;
import plycrag.finding.Severity;
import plycrag.layout.FacetLayout;
import plycrag.layout.Insert;
import plycrag.layout.Layout;
import plycrag.layout.Obstacle;
import plycrag.layout.Omission;

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
    Obstacle obstacle = omission.obstacle();
    return new Finding(
        name(),
        Severity.WARNING,
        new Place.OnFacet(facet.facet().name(), insert.centre().getX(), insert.centre().getY()),
        insert.mark(),
        obstacle.mark(),
        Optional.of(obstacle.measure()),
        "insert " + insert.mark() + " is left out: " + reason(obstacle),
        "");
  }

  private static String reason(Obstacle obstacle) {
    return switch (obstacle.kind()) {
      case FLANGE_AND_TIMBER -> "its flange would be too near to " + obstacle.mark();
      case BOLT_AND_TIMBER -> "its bolt could reach " + obstacle.mark();
      case FLANGE_AND_EDGE -> "its flange would be too near to an edge of " + obstacle.mark();
      case OUTSIDE -> "its hole would not lie inside one piece";
      case FLANGE_AND_SCREW -> "its flange would be too near to screw " + obstacle.mark();
      case TWO_FLANGES -> "its flange would be too near to that of " + obstacle.mark();
      case CENTRE_AND_OUTLINE -> "it would be nearer to the outline than the setback";
    };
  }
}
