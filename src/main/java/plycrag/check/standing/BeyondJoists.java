package plycrag.check.standing;

import java.util.List;
import java.util.Optional;
import plycrag.check.rule.WholeWall;
import plycrag.finding.Finding;
import plycrag.finding.Measure;
import plycrag.geometry.Tolerance;
import plycrag.geometry.Vector3;
import plycrag.layout.Layout;
import plycrag.layout.frame.Joint;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.layout.support.SupportPart;
import plycrag.units.Tape;

/**
 * Hangers beyond the last joist that their ledger is fixed to: they bend it, and pull at one anchor
 * with a lever. One as near as timber is thick is none.
 */
final class BeyondJoists {
  private final SupportPart support;
  private final double near;

  private BeyondJoists(SupportPart support, double near) {
    this.support = support;
    this.near = near;
  }

  static List<Finding> findings(Layout layout, SupportPart support, WholeWall report) {
    BeyondJoists beyond = new BeyondJoists(support, layout.wall().frame().breadth());
    return support.joints().stream()
        .flatMap(joint -> beyond.finding(joint, layout.wall().tape(), report).stream())
        .toList();
  }

  private Optional<Finding> finding(Joint joint, Tape tape, WholeWall report) {
    PlacedMember hanger = placed(joint.first());
    if (hanger.member().role() != MemberRole.HANGER
        || support.members().stream().noneMatch(one -> isLedger(one, joint.second()))) {
      return Optional.empty();
    }
    double by = beyond(hanger, placed(joint.second()));
    return Tolerance.isMore(by, near)
        ? Optional.of(
            report.finding(
                hanger.member().mark(),
                "",
                new Measure(by, 0),
                "hanger "
                    + hanger.member().mark()
                    + " stands "
                    + tape.text(tape.snapUp(by))
                    + " beyond the last joist that ledger "
                    + joint.second()
                    + " is fixed to",
                "leave the ledger room to go on to the next joist ([room] left, right), move the"
                    + " wall along ([room] joist-first), or set timber between the joists there"
                    + " first"))
        : Optional.empty();
  }

  /** How far a hanger is beyond the outer anchors of a ledger; below zero between them, mm. */
  private double beyond(PlacedMember hanger, PlacedMember ledger) {
    double middle = along(ledger, hanger.plane().toRoom(new Vector3(0, 0, near / 2)));
    List<Double> anchors =
        support.anchors().stream()
            .filter(anchor -> anchor.member().equals(ledger.member().mark()))
            .map(Anchor::place)
            .map(place -> along(ledger, place))
            .sorted()
            .toList();
    return anchors.isEmpty()
        ? 0
        : Math.max(anchors.get(0) - middle, middle - anchors.get(anchors.size() - 1));
  }

  private static double along(PlacedMember ledger, Vector3 place) {
    return ledger.plane().fromRoom(place).x();
  }

  private PlacedMember placed(String mark) {
    return support.members().stream()
        .filter(one -> one.member().mark().equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isLedger(PlacedMember one, String mark) {
    return one.member().mark().equals(mark) && one.member().role() == MemberRole.LEDGER;
  }
}
