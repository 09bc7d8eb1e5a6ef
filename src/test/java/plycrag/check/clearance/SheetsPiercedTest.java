package plycrag.check.clearance;

import org.junit.jupiter.api.Test;
import plycrag.check.Found;

class SheetsPiercedTest {
  /** The wall on the right leans over until it stands in the one on the left. */
  private static final String FACING =
      """
      [[facet]]
      name = "port"
      width = 600
      length = 1500
      [[facet]]
      name = "between"
      beside = "port"
      turn = 90
      width = %s
      length = 1500
      [[facet]]
      name = "starboard"
      beside = "between"
      turn = 90
      angle = 30
      width = 600
      length = 1500
      [inserts]
      pattern = "none"
      """;

  /** 1500 mm up the slope it has come 750 mm nearer. */
  @Test
  void passesWhereTheOtherWallStaysClear() {
    Found.by("sheet-pierced", FACING.formatted(900)).isNothing();
  }

  /** It crosses a wall 400 mm away; its own sheet of 18 mm is in the other's studs. */
  @Test
  void findsTimberInSheets() {
    Found.by("sheet-pierced", FACING.formatted(400))
        .isError(true)
        .suggests(
            "let the outlines of facets port and starboard run up to their corner, or end further"
                + " apart ([[facet]] outline)");
  }
}
