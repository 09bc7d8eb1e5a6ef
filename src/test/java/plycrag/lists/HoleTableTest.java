package plycrag.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.document.Cell;

/** Four inserts on one piece of 1200 by 1200, which lies in the lower left corner of its sheet. */
class HoleTableTest {
  private static final String WALL = Found.bay("300, 800", "250, 650");

  private static List<String> rows(String toml) {
    return HoleTable.of(Walls.judged(toml)).rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  /** Seen from the front the sheet is as the facet: x is u. Through 18 mm, 12 mm wide. */
  @Test
  void fromTheFrontPlacesAreThoseOfTheFacet() {
    assertThat(rows(WALL))
        .containsExactly(
            "main 30/25|main|P1|S1|insert|300|250|300|250|12|18|front",
            "main 80/25|main|P1|S1|insert|800|250|800|250|12|18|front",
            "main 30/65|main|P1|S1|insert|300|650|300|650|12|18|front",
            "main 80/65|main|P1|S1|insert|800|650|800|650|12|18|front");
  }

  /** With the back up the piece is turned over: 1200 - 300 and 1200 - 800 from its left. */
  @Test
  void fromTheBackPlacesAreMirrored() {
    assertThat(rows(WALL + "[nesting]\nface-up = \"back\"\n"))
        .containsExactlyInAnyOrder(
            "main 30/25|main|P1|S1|insert|300|250|900|250|12|18|back",
            "main 80/25|main|P1|S1|insert|800|250|400|250|12|18|back",
            "main 30/65|main|P1|S1|insert|300|650|900|650|12|18|back",
            "main 80/65|main|P1|S1|insert|800|650|400|650|12|18|back");
  }
}
