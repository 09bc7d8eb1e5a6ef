package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Listing;
import plycrag.document.Cell;

/** A facet of 2200 that swings on a kick of 300, 500 before masonry with a ledger of 90 on it. */
class HingedBookTest {
  private static final CheckedLayout WALL =
      Walls.judged(
          """
          [wall]
          width = 2440
          fold-edges = "square"
          [[facet]]
          name = "kick"
          angle = 0
          length = 300
          [[facet]]
          name = "main"
          angle = 30
          length = 2200
          [frame]
          section = [45, 90]
          [inserts]
          pattern = "none"
          [support]
          kind = "hinged"
          fixed-to = "masonry"
          behind = 500
          hold = "chains"
          angles = [20, 30, 45]
          """);

  /**
   * The back is 18 + 90 = 108 behind the face, the ledger's front at 90 - 500 - 108 = -518. Where
   * chains hold, v up the face that leans out by a, the back is v · sin a - 108 · cos a toward the
   * climber and 300 + v · cos a + 108 · sin a high; the anchor is as high as at 20°: 300 + 2050 ·
   * 0.93969 + 108 · 0.34202 = 2263.3. From there at 30° it is 1025 - 93.5 + 518 = 1449.5 out and
   * 2263.3 - 300 - 1775.4 - 54 = 133.9 down: 1456. The backup is held 100 lower and anchored 100
   * beside: at 30° 975 - 93.5 + 518 = 1399.5, 2263.3 - 300 - 1688.7 - 54 = 220.5 and 100: 1420.
   * What keeps it from lifting is once more as much lower and further beside: 925 - 93.5 + 518 =
   * 1349.5, 2263.3 - 300 - 1602.2 - 54 = 307.1 and 200: 1398.
   */
  @Test
  void chainsAreAsLongAsTheWallLeans() {
    List<String> rows =
        new StandingUp(WALL, new Figures(Walls.portfolio(WALL)))
            .blocks().stream()
                .filter(Listing.class::isInstance)
                .map(block -> ((Listing) block).table())
                .filter(table -> table.title().startsWith("What holds it"))
                .flatMap(table -> table.rows().stream())
                .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
                .toList();
    assertThat(rows)
        .hasSize(6)
        .startsWith(
            "TE1|holds the wall|23 / 2050|23 / -518 / 2263|1118 mm|1456 mm|1941 mm",
            "TE1b|backup, works by itself|23 / 1950|123 / -518 / 2263|1092 mm|1420 mm|1893 mm",
            "LK1|keeps it from lifting|23 / 1850|223 / -518 / 2263|1085 mm|1398 mm|1854 mm");
  }
}
