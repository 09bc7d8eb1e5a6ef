package plycrag.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.Found;
import plycrag.document.Cell;

class ScrewPointTableTest {
  /**
   * From the zone's corner at 100, 100: 300 and 500 to the right, 150 up; a stud stands about 600.
   */
  @Test
  void aPointTellsItsPlaceAndWhatIsBehind() {
    String zone =
        """
        [[zone]]
        name = "smears"
        left = 100
        low = 100
        width = 600
        height = 400
        points = "screw-points"
        pattern = "lines"
        columns = [300, 500]
        rows = [150]
        """;
    assertThat(
            ScrewPointTable.of(Walls.judged(Found.bay("900", "900") + zone)).rows().stream()
                .map(row -> String.join("|", row.stream().map(Cell::text).toList())))
        .containsExactly("smears 1|main|P1|400|250|", "smears 2|main|P1|600|250|ST2");
    assertThat(ScrewPointTable.of(Walls.judged(Found.bay("900", "900"))).rows())
        .isEqualTo(List.of());
  }
}
