package plycrag.stock;

import plycrag.layout.Layout;
import plycrag.layout.frame.MemberRole;
import plycrag.layout.support.Anchor;
import plycrag.layout.support.PlacedMember;
import plycrag.units.Tape;

/** What hardware is called in the shopping list and wherever a piece of it stands. */
final class HardwareWords {
  static final String BRACKET = "angle bracket";
  static final String STRAP = "perforated strap";
  static final String HINGE = "hinge, for the whole load";
  static final String SCREW = "structural screw, member to member";
  static final String GUSSET = "gusset";
  static final String TETHER =
      "strut, strap, chain or rope with its fittings, half of them backups";

  private HardwareWords() {}

  static String bolt(BoltSize size, Tape tape) {
    return "bolt through " + tape.size(size.grip()) + " of timber";
  }

  /** All but ledgers is as thick as the frame's timber. */
  static String anchor(Anchor anchor, Layout layout) {
    double timber =
        layout.standing().stream()
            .map(PlacedMember::member)
            .filter(member -> member.mark().equals(anchor.member()))
            .filter(member -> member.role() == MemberRole.LEDGER)
            .mapToDouble(
                ledger ->
                    anchor.into() == Anchor.Into.JOIST ? ledger.box().getHeight() : ledger.depth())
            .findFirst()
            .orElse(layout.wall().frame().breadth());
    return "anchor into "
        + anchor.into().words()
        + ", for timber of "
        + layout.wall().tape().size(timber);
  }
}
