package plycrag.stock;

import plycrag.layout.joints.Hardware.Anchored;
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
  static final String LOCK =
      "strut of adjustable length against lifting, that bears push and has a pin at both ends";

  private HardwareWords() {}

  static String bolt(BoltSize size, Tape tape) {
    return "bolt through " + tape.size(size.grip()) + " of timber";
  }

  static String anchor(Anchored anchored, Tape tape) {
    String words =
        "anchor into "
            + anchored.anchor().into().words()
            + ", for timber of "
            + tape.size(anchored.bolt().line().grip());
    return anchored.sunk() == 0
        ? words
        : words + " under its head, which is sunk " + tape.size(anchored.sunk());
  }
}
