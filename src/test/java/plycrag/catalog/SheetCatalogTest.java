package plycrag.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * PS 1 has 96 by 48 in; the tables of European mills have 2440 by 1220 and 2500 by 1250 mm, those
 * of Australian suppliers 2400 by 1200.
 */
class SheetCatalogTest {

  @Test
  void inchesAreExact() {
    StockSize size = SheetCatalog.find("4x8").orElseThrow();
    assertThat(size.length()).isCloseTo(96 * 25.4, within(1e-9));
    assertThat(size.width()).isCloseTo(48 * 25.4, within(1e-9));
  }

  @Test
  void metricNamesAreTheirSizes() {
    assertThat(SheetCatalog.all())
        .filteredOn(size -> size.name().length() > 3)
        .hasSize(3)
        .allSatisfy(
            size ->
                assertThat(size.name())
                    .isEqualTo("%.0fx%.0f".formatted(size.length(), size.width())));
  }

  @Test
  void everyRowNamesItsSourceAndNoNameStandsTwice() {
    assertThat(SheetCatalog.all()).allSatisfy(row -> assertThat(row.source()).isNotBlank());
    assertThat(SheetCatalog.all()).extracting(StockSize::name).doesNotHaveDuplicates();
  }
}
