package plycrag.layout.pattern;

import plycrag.wall.Inserts;

/** What of an insert something is too near to: each a circle about its centre. */
enum InsertPart {
  /** What lies on the back of the sheet. */
  FLANGE("flange"),
  /** The space behind the sheet that its bolt may reach. */
  BOLT_ZONE("bolt zone"),
  /** What its barrel stands in. */
  HOLE("hole"),
  /** The centre alone. */
  CENTRE("centre");

  private final String word;

  InsertPart(String word) {
    this.word = word;
  }

  /** What a person calls it. */
  public String word() {
    return word;
  }

  /** From the centre to its rim, mm. */
  double radius(Inserts insert) {
    return switch (this) {
      case FLANGE -> insert.body().flange() / 2;
      case BOLT_ZONE -> insert.bolt().zone() / 2;
      case HOLE -> insert.body().hole() / 2;
      case CENTRE -> 0;
    };
  }
}
