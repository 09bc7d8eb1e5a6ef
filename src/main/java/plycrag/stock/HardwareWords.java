package plycrag.stock;

import plycrag.layout.support.Anchor;
import plycrag.units.Tape;
import plycrag.wall.Wall;

/** What hardware is called in the shopping list and wherever a piece of it stands. */
final class HardwareWords {
  static final String BRACKET = "angle bracket";
  static final String STRAP = "perforated strap";
  static final String HINGE = "hinge, for the whole load";
  static final String SCREW = "structural screw, member to member";
  static final String GUSSET = "gusset";
  static final String TETHER = "strut, strap, chain or rope with its fittings, half of them backups";

  private HardwareWords() {}

  static String bolt(BoltSize size, Tape tape) {
    return "bolt through " + tape.size(size.grip()) + " of timber";
  }

  static String anchor(Anchor.Into into, Wall wall) {
    return "anchor into "
        + into.words()
        + ", for timber of "
        + wall.tape().size(wall.frame().breadth());
  }
}
