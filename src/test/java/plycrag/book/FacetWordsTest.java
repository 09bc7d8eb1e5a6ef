package plycrag.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.check.CheckedLayout;
import plycrag.document.Book.Paragraph;
import plycrag.prices.PriceList;
import plycrag.stock.ShoppingList;
import plycrag.stock.StickPlan;

/** What the book says of the facets of walls that are no rectangle or stand in a corner. */
class FacetWordsTest {
  private static List<String> words(String toml) {
    CheckedLayout wall = Walls.judged(toml);
    StickPlan plan = StickPlan.of(wall, PriceList.empty());
    ShoppingList list =
        ShoppingList.of(wall, plan, Walls.parameters(toml).buying(), PriceList.empty());
    return BuildBook.of(wall, plan, list, Walls.portfolio(wall)).sections().stream()
        .flatMap(section -> section.blocks().stream())
        .filter(Paragraph.class::isInstance)
        .map(block -> ((Paragraph) block).text())
        .filter(text -> text.matches("Facet [a-z]+: .*"))
        .toList();
  }

  /** Its upper edge is 100 + 1000 · cos 10° = 1084.8 above the floor. */
  @Test
  void aSlabLeansBackAndTellsItsCorners() {
    List<String> slab =
        words(
            """
            [wall]
            raise = 100
            [[facet]]
            name = "slab"
            angle = -10
            outline = [[0, 0], [1200, 0], [1200, 1000], [0, 600]]
            """);
    assertThat(slab).hasSize(1);
    assertThat(slab.get(0))
        .startsWith(
            "Facet slab: 1200 mm wide, 1000 mm up the slope, leaning back 10° from vertical, its"
                + " lower edge 100 mm and its upper edge 1084.8 mm above the floor. Its corners, from"
                + " its left and up the slope: ")
        .contains("1200 / 0", "1200 / 1000", "0 / 600", "0 / 0");
  }

  /** Turned by 60° toward the climber, two plumb faces enclose 180 - 60 = 120°. */
  @Test
  void aCornerIsToldByWhatItsFacesEnclose() {
    List<String> both =
        words(
            """
            [[facet]]
            name = "port"
            width = 1200
            length = 1200
            angle = 0
            [[facet]]
            name = "starboard"
            beside = "port"
            turn = 60
            width = 1200
            length = 1200
            angle = 0
            """);
    assertThat(both).hasSize(2);
    assertThat(both.get(0)).endsWith("above the floor.");
    assertThat(both.get(1))
        .endsWith(
            " It meets facet port in a corner on its left, where the climbing faces enclose 120°.");
  }
}
