package plycrag.stock;

import plycrag.params.FrameParameters;
import plycrag.units.Decimal;

/** Names a timber section as lists do. */
final class Section {
  private Section() {}

  /** {@code 45x90}: the smaller side first, mm. */
  static String name(FrameParameters frame) {
    double smaller = Math.min(frame.breadth(), frame.depth());
    double greater = Math.max(frame.breadth(), frame.depth());
    return Decimal.of(smaller, 2) + "x" + Decimal.of(greater, 2);
  }
}
