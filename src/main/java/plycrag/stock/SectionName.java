package plycrag.stock;

import plycrag.units.Decimal;
import plycrag.wall.buying.Section;

/** Names a timber section as lists do. */
final class SectionName {
  private SectionName() {}

  /** {@code 45x90}: the smaller side first, mm. */
  static String name(Section section) {
    return Decimal.of(section.smaller(), 2) + "x" + Decimal.of(section.greater(), 2);
  }
}
