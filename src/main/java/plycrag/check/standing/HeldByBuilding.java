package plycrag.check.standing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Severity;
import plycrag.geometry.Shapes;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.SupportPart;
import plycrag.units.Count;
import plycrag.units.Tape;
import plycrag.wall.room.Ceiling;
import plycrag.wall.room.GivenSupport;
import plycrag.wall.room.GivenSupport.Base;
import plycrag.wall.room.GivenSupport.Kind;
import plycrag.wall.room.Room.Members;

/** Whether what a part of a support is fixed to can bear it. */
final class HeldByBuilding {
  private static final int LEAST_ANCHORS = 2;

  /** What is no further from a plate holds its edge of the frame (a choice), mm. */
  private static final double BESIDE_PLATE = 250;

  private final PartReport report;
  private final Layout layout;
  private final SupportPart part;
  private final GivenSupport asked;
  private final String free;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * @param rule that finds
   */
  HeldByBuilding(String rule, Layout layout, SupportPart part) {
    this.report = PartReport.of(rule, layout, part);
    this.layout = layout;
    this.part = part;
    this.asked = part.asked();
    this.free = report.onPosts();
  }

  List<Finding> findings() {
    if (layout.wall().room().noDrill() && !asked.hasPosts()) {
      add(
          Severity.ERROR,
          "nothing may be fixed to the building, and this support is",
          "let it stand free " + free);
    }
    if (asked.kind() == Kind.HUNG) {
      ceiling(layout.wall().room().ceiling());
      fallsAlong();
      findings.addAll(
          BeyondJoists.findings(layout, part, new WholeWall(report.rule(), Severity.ERROR)));
    }
    boolean isThin = asked.fixing().base().filter(base -> base == Base.SINGLE_SKIN).isPresent();
    if (asked.isOnWall() && isThin) {
      add(
          Severity.WARNING,
          "a wall one brick thick is not checked for what it is to hold",
          "have it looked at by an engineer before anything is fixed to it");
    }
    anchors();
    return findings;
  }

  private void ceiling(Ceiling ceiling) {
    if (!ceiling.isTold()) {
      add(
          Severity.ERROR,
          "the wall is to hang, and how high the ceiling is has not been told",
          "give its height ([room] ceiling)");
    }
    if (ceiling.members() != Members.JOISTS) {
      String what =
          ceiling.members() == Members.TRUSS
              ? "the ceiling is carried by trusses, which carry nothing but what they were made for"
              : "what carries the ceiling is not known";
      add(
          Severity.ERROR,
          what,
          "let the wall stand free " + free + ", or find joists ([room] ceiling-members)");
    } else if (ceiling.joists().section().isEmpty() || ceiling.joists().span().isEmpty()) {
      add(
          Severity.ERROR,
          "section and span of the ceiling's joists have not been told",
          "measure them ([room] joist-section and joist-span)");
    }
  }

  /** Ledgers lie level, against what is above all along. */
  private void fallsAlong() {
    Tape tape = layout.wall().tape();
    for (PlacedMember placed : part.members()) {
      Envelope box = placed.member().box();
      if (placed.member().role() == MemberRole.LEDGER) {
        double rise = Math.abs(above(placed, box.getMaxX()) - above(placed, box.getMinX()));
        if (rise > Tolerance.MARKED) {
          add(
              Severity.ERROR,
              "what is above rises by "
                  + tape.text(tape.snapUp(rise))
                  + " over the length of ledger "
                  + placed.member().mark()
                  + ", which lies level",
              "let the wall stand free "
                  + free
                  + ", or fix it to a wall ("
                  + report.key("kind")
                  + ")");
        }
      }
    }
  }

  /** How high the room is over a place along a ledger, mm. */
  private double above(PlacedMember ledger, double along) {
    Vector3 place = ledger.plane().toRoom(new Vector3(along, 0, 0));
    return layout.wall().room().ceiling().at(place).orElse(0.0);
  }

  private void anchors() {
    part.members().stream()
        .map(PlacedMember::member)
        .filter(member -> member.role() == MemberRole.LEDGER)
        .forEach(ledger -> anchored("ledger " + ledger.mark(), on(ledger)));
    if (asked.isFlat() && part.unheld().isEmpty()) {
      layout.facets().stream()
          .filter(facet -> part.facets().contains(facet.facet().name()))
          .forEach(this::plates);
    }
  }

  private long on(Member ledger) {
    return part.anchors().stream().filter(anchor -> anchor.member().equals(ledger.mark())).count();
  }

  /** Of a frame that lies on the building's wall. */
  private void plates(FacetLayout facet) {
    facet.members().stream()
        .filter(Member::endsUprights)
        .forEach(plate -> anchored(plate.role().word() + " " + plate.mark(), along(plate, facet)));
  }

  /** Through a plate or just beside it. */
  private long along(Member plate, FacetLayout facet) {
    return part.anchors().stream()
        .filter(anchor -> isOf(anchor, facet))
        .map(anchor -> facet.facet().plane().fromRoom(anchor.place()))
        .map(place -> Shapes.point(place.x(), place.y()))
        .filter(place -> place.distance(plate.footprint()) < BESIDE_PLATE)
        .count();
  }

  private static boolean isOf(Anchor anchor, FacetLayout facet) {
    return facet.members().stream().anyMatch(one -> one.mark().equals(anchor.member()));
  }

  private void anchored(String what, long count) {
    if (count < LEAST_ANCHORS) {
      add(
          Severity.ERROR,
          what
              + " meets "
              + Count.of(Math.toIntExact(count), "place")
              + " to fix it to, and two are the least",
          "move the wall so that studs or joists lie behind it, or set timber between them first");
    }
  }

  private void add(Severity severity, String sentence, String suggestion) {
    findings.add(report.named(severity, sentence, suggestion));
  }
}
