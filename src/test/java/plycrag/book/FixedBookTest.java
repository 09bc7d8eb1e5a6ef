package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Listing;
import plycrag.document.Cell;

/** A plumb wall of 2400 by 1200 on six studs, held by ties of a ledger 300 behind its frame. */
class FixedBookTest {
  private static final CheckedLayout WALL =
      Walls.judged(
          """
          [[facet]]
          width = 2400
          length = 1200
          [sheet]
          length = 1200
          width = 1200
          seam-gap = 0
          [frame]
          section = [45, 90]
          stud-spacing = 600
          [support]
          kind = "fixed"
          fixed-to = "masonry"
          behind = 300
          """);

  private static List<String> rows(String title) {
    return new StandingUp(WALL, new Figures(Walls.portfolio(WALL)))
        .blocks().stream()
            .filter(Listing.class::isInstance)
            .map(block -> ((Listing) block).table())
            .filter(table -> table.title().startsWith(title))
            .flatMap(table -> table.rows().stream())
            .map(row -> String.join("|", row.stream().map(Cell::text).toList()))
            .toList();
  }

  /**
   * 1.701 kg a metre: 2 · 2.4 + 6 · 1.11 = 11.46 m are 19.49 kg. Sheets 2.88 m² · 0.018 · 680 =
   * 35.25 kg, together 54.74, (19.49 · 63 + 35.25 · 9) / 54.74 = 28.2 behind. The ledger of 2.4 m
   * and three ties of 0.255: 3.165 m, 5.38 kg; in all 60.13. People at 25 kg: two, three, two,
   * three.
   */
  @Test
  void theSupportWeighsWithTheRest() {
    List<String> rows = rows("What it weighs");
    assertThat(rows.get(0)).isEqualTo("frame of facet main|19.5|2|1200 mm|-63 mm|600 mm");
    assertThat(rows.get(1)).isEqualTo("the same with its sheets|54.7|3|1200 mm|-28 mm|600 mm");
    assertThat(rows.get(2)).startsWith("support|5.4|2|").endsWith("|1155 mm");
    assertThat(rows.get(3)).startsWith("all of it|60.1|3|");
  }

  /**
   * The building's wall is 108 + 300 behind the face, the ledger's middle half of 90 under 1200.
   * Six steps of (2340 - 60) / 6 = 380; in the floor under the plate's middle, 18 + 45 behind.
   */
  @Test
  void anchorsAreReadFromTheWallsLeftAndItsFoot() {
    assertThat(rows("Anchors"))
        .hasSize(14)
        .contains(
            "AN1|LG1|masonry|60 mm|-408 mm|1155 mm",
            "AN2|LG1|masonry|440 mm|-408 mm|1155 mm",
            "AN7|LG1|masonry|2340 mm|-408 mm|1155 mm",
            "AN8|PL1|the floor|60 mm|-63 mm|0 mm");
  }
}
