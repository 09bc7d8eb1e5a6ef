package plycrag.check.making;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.Rule;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Cure;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.finding.Severity;
import plycrag.geometry.Tolerance;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Footing;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** The bottom plate stands on the floor, or says how much is to be packed under it. */
public final class PlateOnFloor implements Rule {
  private static final String RAISE = "[wall] raise";

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
    return layout.facets().stream()
        .filter(facet -> !facet.facet().standsOnFacet())
        .flatMap(facet -> finding(facet, layout).stream())
        .toList();
  }

  private Optional<Finding> finding(FacetLayout lowest, Layout layout) {
    Tape tape = layout.wall().tape();
    Footing footing = lowest.footing();
    String plate =
        lowest.members().stream()
            .filter(member -> member.role() == MemberRole.PLATE)
            .map(Member::mark)
            .findFirst()
            .orElse("");
    if (Footing.hangs(lowest.facet())) {
      return Optional.of(hanging(plate, lowest.facet(), tape));
    }
    if (footing.narrows()) {
      return Optional.of(narrowing(plate, lowest.facet(), footing, tape));
    }
    if (footing.packing() < -Tolerance.TOUCH) {
      return Optional.of(
          layout.wall().base(lowest.facet()) > 0
              ? inRails(plate, lowest, tape)
              : inFloor(plate, lowest, tape));
    }
    return footing.packing() > tape.unit().markingGrid()
        ? Optional.of(packed(plate, lowest, tape))
        : Optional.empty();
  }

  private Finding hanging(String plate, Facet facet, Tape tape) {
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            plate,
            "",
            new Measure(facet.raise(), 0),
            "facet "
                + facet.name()
                + " leans out so far that its frame does not stand on the floor: it ends "
                + tape.text(facet.raise())
                + " above it",
            "put a facet below it that stands, or have what it hangs from designed");
  }

  private Finding narrowing(String plate, Facet facet, Footing footing, Tape tape) {
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            plate,
            "",
            new Measure(footing.packing(), 0),
            "the corners beside facet "
                + facet.name()
                + " come together below it, and its frame ends "
                + tape.text(footing.packing())
                + " above the floor",
            "raise the wall less ([wall] raise), make the facet wider, or have what it hangs from"
                + " designed");
  }

  private Finding inFloor(String plate, FacetLayout lowest, Tape tape) {
    return sunk(plate, lowest, " leans back, and its frame would stand ", "the floor", tape);
  }

  private Finding inRails(String plate, FacetLayout lowest, Tape tape) {
    return sunk(
        plate, lowest, " stands on the rails under the posts, and would stand ", "them", tape);
  }

  private Finding sunk(String plate, FacetLayout lowest, String how, String where, Tape tape) {
    Footing footing = lowest.footing();
    double raise = tape.snapUp(footing.leastRaise());
    return new WholeWall(name(), Severity.ERROR)
        .finding(
            plate,
            "",
            new Measure(footing.packing(), 0),
            "facet "
                + lowest.facet().name()
                + how
                + tape.text(-footing.packing())
                + " deep in "
                + where,
            "let the wall begin at least "
                + tape.text(raise)
                + " above the floor "
                + Cure.length(RAISE, raise, tape).words());
  }

  private Finding packed(String plate, FacetLayout lowest, Tape tape) {
    Footing footing = lowest.footing();
    double more = footing.raiseForPlate() - lowest.facet().raise();
    return new WholeWall(name(), Severity.WARNING)
        .finding(
            plate,
            "",
            new Measure(footing.packing(), 0),
            "the bottom plate's lowest line is "
                + tape.text(footing.packing())
                + " above the floor and is to be packed along its length",
            "raise the wall by at least "
                + tape.text(tape.snapUp(more))
                + " for a plate on the floor ([wall] raise)");
  }
}
