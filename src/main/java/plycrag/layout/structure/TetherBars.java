package plycrag.layout.structure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Tether;
import plycrag.solve.frame.Acting;
import plycrag.solve.frame.Attachment;
import plycrag.solve.frame.Bar;
import plycrag.solve.frame.FrameNode;
import plycrag.solve.frame.FrameSupport;
import plycrag.wall.room.GivenSupport.Hold;

/**
 * What holds a hinged facet at its angle: from the back of the stud that it is fixed to, to the
 * ledger that it hangs on or the building. Backups hang slack.
 */
final class TetherBars {
  /**
   * Modulus of elasticity times area of a steel chain or webbing, N: a choice that moves little.
   */
  private static final double STIFFNESS = 1e6;

  /** A ledger this near to where a tether ends carries it, mm. */
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
        .filter(tether -> !tether.backup())
        .forEach(this::hold);
  }

  private void hold(Tether tether) {
    Vector3 held = layout.held(tether, angle);
    String facet = layout.runs().get(0).get(layout.runs().get(0).size() - 1).facet().name();
    Optional<AxisStations> stud =
        members.values().stream()
            .filter(one -> one.axis().facet().equals(facet) && one.axis().role().isUpright())
            .min(Comparator.comparingDouble(one -> one.axis().distance(held)));
    boolean pushes =
        layout.wall().support().filter(one -> one.hinge().hold() == Hold.STRUTS).isPresent();
    stud.ifPresent(
        one ->
            bars.add(
                new Bar(
                    tether.mark(),
                    reach(one.near(held), held),
                    anchor(tether),
                    STIFFNESS,
                    pushes ? Acting.BOTH_WAYS : Acting.POSITIVE_ONLY)));
  }

  private Attachment anchor(Tether tether) {
    return members.values().stream()
        .filter(one -> one.axis().role() == MemberRole.LEDGER)
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
