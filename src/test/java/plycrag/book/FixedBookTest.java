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
   * at 3.402 a metre is 8.16 kg, its middle 408 - 45 = 363 behind; four ties of 0.21 m are 1.43 kg,
   * 108 + 105 = 213 behind: 9.59 kg, (8.16 · 363 + 1.43 · 213) / 9.59 = 340.7 behind, as high as
   * the ties' middle at 1200 - 165 - 45; in all 64.33. People at 25 kg: two, three, two, three.
   */
  @Test
  void theSupportWeighsWithTheRest() {
    List<String> rows = rows("What it weighs");
    assertThat(rows.get(0)).isEqualTo("frame of facet main|19.5|2|1200 mm|-63 mm|600 mm");
    assertThat(rows.get(1)).isEqualTo("the same with its sheets|54.7|3|1200 mm|-28 mm|600 mm");
    assertThat(rows.get(2)).isEqualTo("support|9.6|2|1200 mm|-341 mm|990 mm");
    assertThat(rows.get(3)).startsWith("all of it|64.3|3|");
  }

  /**
   * The building's wall is 108 + 300 behind the face; the ledger's top is 45 and 120 under 1200,
   * its middle half of 90 lower. Six steps of (2340 - 60) / 6 = 380; in the floor under the plate's
   * middle, 18 + 45 behind, between studs: (45 + 577.5) / 2 = 311, and 889, 1511, 2089.
   */
  @Test
  void anchorsAreReadFromTheWallsLeftAndItsFoot() {
    assertThat(rows("Anchors"))
        .hasSize(11)
        .contains(
            "AN1|LG1|masonry|60 mm|-408 mm|990 mm",
            "AN2|LG1|masonry|440 mm|-408 mm|990 mm",
            "AN7|LG1|masonry|2340 mm|-408 mm|990 mm",
            "AN8|PL1|the floor|311 mm|-63 mm|0 mm",
            "AN11|PL1|the floor|2089 mm|-63 mm|0 mm");
  }
}
