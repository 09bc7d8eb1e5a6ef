package plycrag.stock;

import plycrag.units.Decimal;
import plycrag.wall.Frame;

/** Names a timber section as lists do. */
final class SectionName {
  private SectionName() {}

  /** {@code 45x90}: the smaller side first, mm. */
  static String name(Frame frame) {
    double smaller = Math.min(frame.breadth(), frame.depth());
    double greater = Math.max(frame.breadth(), frame.depth());
    return Decimal.of(smaller, 2) + "x" + Decimal.of(greater, 2);
  }
}
