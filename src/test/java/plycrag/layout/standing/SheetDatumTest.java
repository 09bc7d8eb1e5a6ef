package plycrag.layout.standing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.Walls;
import plycrag.layout.Layout;

/** Four whole sheets, two beside two, by hand: each is measured from the seams in the middle. */
class SheetDatumTest {
  private static final String FOUR =
      """
      [[facet]]
      width = 4882
      length = 2442
      [sheet]
      lay = "across"
      edges = "%s"
      [inserts]
      pattern = "none"
      """;

  private static List<SheetDatum> datums(String edges) {
    Layout layout = Walls.laidOut(FOUR.formatted(edges));
    return layout.sheets().stream().map(sheet -> SheetDatum.of(layout, sheet)).toList();
  }

  @Test
  void sheetsAsBoughtAreMeasuredFromTheirSeams() {
    assertThat(datums("as-bought"))
        .extracting(SheetDatum::corner)
        .containsExactly("upper right", "upper left", "lower right", "lower left");
    assertThat(datums("as-bought").get(0).across(2400)).isEqualTo(40);
    assertThat(datums("as-bought").get(0).up(1200)).isEqualTo(20);
    assertThat(datums("as-bought").get(3).across(2400)).isEqualTo(2400);
  }

  @Test
  void trimmedOnesAreTrueAllRound() {
    assertThat(datums("trimmed")).noneMatch(SheetDatum::isOdd);
  }
}
