package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Tether;
import plycrag.layout.support.Tether.Task;
import plycrag.solve.frame.Acting;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Bar;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameSupport;
import plycrag.wall.room.GivenSupport.Hold;

/**
 * What holds a hinged facet at its angle: from the back of the stud that it is fixed to, to the
 * ledger or the post that it hangs on, or the building. Backups hang slack.
 */
final class TetherBars {
  /**
   * Modulus of elasticity times area of a steel chain or webbing, N: a choice that moves little.
   */
  private static final double STIFFNESS = 1e6;

  private static final Set<MemberRole> HOLDING = Set.of(MemberRole.LEDGER, MemberRole.POST);

  /** What is this near to where a tether ends carries it, mm. */
  private static final double NEAR = 200;

  private final Layout layout;
  private final double angle;
  private final Map<String, AxisStations> members;
  private final List<Bar> bars = new ArrayList<>();
  private final List<FrameSupport> supports = new ArrayList<>();

  TetherBars(Layout layout, double angle, Map<String, AxisStations> members) {
    this.layout = layout;
    this.angle = angle;
    this.members = members;
  }

  void hold() {
    layout.support().stream()
        .flatMap(support -> support.tethers().stream())
        .filter(tether -> tether.task() != Task.BACKUP)
        .forEach(this::hold);
  }

  private void hold(Tether tether) {
    Vector3 held = layout.held(tether, angle);
    String facet = layout.runs().get(0).get(layout.runs().get(0).size() - 1).facet().name();
    Optional<AxisStations> stud =
        members.values().stream()
            .filter(one -> one.axis().facet().equals(facet) && one.axis().role().isUpright())
            .min(Comparator.comparingDouble(one -> one.axis().distance(held)));
    stud.ifPresent(
        one ->
            bars.add(
                new Bar(
                    tether.mark(),
                    reach(one.near(held), held),
                    anchor(tether),
                    STIFFNESS,
                    acting(tether))));
  }

  /** Struts bear both; else what holds bears no push, and what locks is slack under pull. */
  private Acting acting(Tether tether) {
    if (layout.wall().supports().any(one -> one.hinge().hold() == Hold.STRUTS)) {
      return Acting.BOTH_WAYS;
    }
    return tether.task() == Task.LOCK ? Acting.NEGATIVE_ONLY : Acting.POSITIVE_ONLY;
  }

  private Attachment anchor(Tether tether) {
    return members.values().stream()
        .filter(one -> HOLDING.contains(one.axis().role()))
        .filter(one -> one.axis().distance(tether.anchor()) < NEAR)
        .min(Comparator.comparingDouble(one -> one.axis().distance(tether.anchor())))
        .map(ledger -> reach(ledger.near(tether.anchor()), tether.anchor()))
        .orElseGet(() -> building(tether));
  }

  private Attachment building(Tether tether) {
    FrameNode node = new FrameNode("building at " + tether.mark(), tether.anchor());
    supports.addAll(FrameSupport.fixed(node));
    return Attachment.at(node);
  }

  private static Attachment reach(Attachment station, Vector3 place) {
    return new Attachment(station.node(), place.minus(station.node().place()));
  }

  List<Bar> bars() {
    return bars;
  }

  List<FrameSupport> supports() {
    return supports;
  }
}
