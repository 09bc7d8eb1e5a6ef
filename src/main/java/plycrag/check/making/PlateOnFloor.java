package plycrag.check.making;

import java.util.List;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.layout.FacetLayout;
import plycrag.layout.Footing;
import plycrag.layout.Layout;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** The bottom plate stands on the floor, or says how much is to be packed under it. */
public final class PlateOnFloor implements Rule {
  private static final double TOLERANCE = 0.01;

  @Override
  public String name() {
    return "plate-floor";
  }

  @Override
  public String promise() {
    return "The frame stands on the floor and not in it, or is told to hang.";
  }

  @Override
  public List<Finding> findings(Layout layout) {
    FacetLayout lowest = layout.facets().get(0);
    Footing footing = lowest.footing();
    Tape tape = layout.wall().tape();
    if (Footing.hangs(lowest.facet())) {
      return List.of(hanging(lowest.facet(), tape));
    }
    if (footing.packing() < -TOLERANCE) {
      return List.of(inFloor(footing, tape));
    }
    if (footing.packing() > tape.unit().markingGrid()) {
      return List.of(packed(footing, tape));
    }
    return List.of();
  }

  private Finding hanging(Facet facet, Tape tape) {
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            "PL1",
            "",
            new Measure(facet.raise(), 0),
            "facet "
                + facet.name()
                + " leans out so far that its frame does not stand on the floor: it ends "
                + tape.text(facet.raise())
                + " above it",
            "put a facet below it that stands, or have what it hangs from designed");
  }

  private Finding inFloor(Footing footing, Tape tape) {
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            "PL1",
            "",
            new Measure(footing.packing(), 0),
            "the facet leans back, and its frame would stand "
                + tape.text(-footing.packing())
                + " deep in the floor",
            "raise the wall by at least "
                + tape.text(tape.snapUp(footing.leastRaise()))
                + " ([wall] raise)");
  }

  private Finding packed(Footing footing, Tape tape) {
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            "PL1",
            "",
            new Measure(footing.packing(), 0),
            "the bottom plate's lowest line is "
                + tape.text(footing.packing())
                + " above the floor and is to be packed along its length",
            "raise the wall by at least "
                + tape.text(tape.snapUp(footing.raiseForPlate()))
                + " for a plate on the floor ([wall] raise)");
  }
}
