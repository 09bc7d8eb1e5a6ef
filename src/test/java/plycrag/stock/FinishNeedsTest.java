package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.Layout;

/** Coverages are common practice, no source. */
class FinishNeedsTest {
  /** Four pieces of 1200 by 2500 without gaps: 12 m², 29.6 m of edges 18 mm thick. */
  private static final String WALL =
      """
      [[facet]]
      width = 4800
      length = 2500
      [sheet]
      length = 2500
      width = 1200
      seam-gap = 0
      lay = "up"
      """;

  private static List<Need> needs(String toml) {
    Layout layout = Walls.laidOut(toml);
    return new FinishNeeds(layout).needs();
  }

  private static void assertWants(List<Need> needs, String paint, String sealer, String paper) {
    assertThat(needs)
        .extracting(want -> want.amount().quantity().toPlainString())
        .containsExactly(paint, sealer, paper);
  }

  /**
   * Paint 12 m² · 2 coats / 10 m² a litre = 2.4 l. Edges 29.6 m · 0.018 m = 0.5328 m², 2 coats, 5
   * m² a litre: 0.2131 l, which is 0.3 l. A sheet of sandpaper for 2 m²: 6, exactly.
   */
  @Test
  void twoCoatsOfPaintAndSealerAndASheetOfPaperForTwoSquareMetres() {
    List<Need> needs = needs(WALL);
    assertWants(needs, "2.4", "0.3", "6.0");
    assertThat(needs)
        .extracting(want -> want.amount().unit())
        .containsExactly("litre", "litre", "piece");
    assertThat(needs).allMatch(want -> want.amount().spare() == 0 && want.group().equals("finish"));
    assertThat(needs.get(0).note()).startsWith("2 coats, 10 m² a litre and coat;");
    assertThat(needs.get(1).note()).startsWith("2 coats, 5 m² a litre and coat;");
    assertThat(needs.get(2).note()).startsWith("a sheet for 2 m²;");
  }

  /**
   * 2500 by 4000 in one piece less an opening of 1000 by 2000: 8 m² are 1.6 l and 4 sheets. Its
   * outer edge is 13 m, that of the opening 6 m: 19 m · 0.04 m = 0.76 m² are 0.304 l, which is 0.4;
   * without the opening's they would be 0.208 l.
   */
  @Test
  void anOpeningHasEdgesAndNoFace() {
    String wall =
        """
        [[facet]]
        width = 2500
        length = 4000
        [sheet]
        length = 4000
        width = 2500
        thickness = 40
        [[cutout]]
        name = "window"
        left = 700
        low = 1000
        width = 1000
        height = 2000
        """;
    assertWants(needs(wall), "1.6", "0.4", "4.0");
  }

  /** 3.1 m² are 0.62 l, which is 0.7, and a sheet of paper and a half, which are two. */
  @Test
  void whatIsBegunIsBought() {
    List<Need> needs =
        needs(
            """
            [[facet]]
            width = 1240
            length = 2500
            [sheet]
            length = 2500
            width = 1240
            """);
    assertThat(needs.get(0).amount().quantity()).isEqualByComparingTo("0.7");
    assertThat(needs.get(2).amount().quantity()).isEqualByComparingTo("2");
  }
}
