package plycrag.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.document.Cell;

class FindingTableTest {
  private static List<String> rows(String toml) {
    return FindingTable.of(Walls.judged(toml)).rows().stream()
        .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
        .toList();
  }

  /** A flange of 13 mm in radius, 20 from the edge: 7 where 12 must remain, 5 too few. */
  @Test
  void aDistanceStandsBesideWhatItMustBe() {
    assertThat(rows(Found.bay("20", "300", "setback = 0", "when-blocked = \"report\"")))
        .contains("insert-edge|error|main 2/30|P1|main|20|300|7|12|move it inward by 5 mm");
  }

  /** A wall without inserts is told of once, of no place and without a measure. */
  @Test
  void whatHasNoPlaceLeavesItEmpty() {
    String bare = Found.BAY + "raise = 0\n[inserts]\npattern = \"none\"\n";
    assertThat(rows(bare.replace("raise = 0\n", "")))
        .anyMatch(row -> row.startsWith("no-inserts|"))
        .allMatch(row -> row.split("[|]", -1).length == 10);
  }
}
