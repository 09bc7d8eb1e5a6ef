package plycrag.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dressed dry sizes in inches: NDS Supplement Table 1A (sizes of PS 20). */
class TimberCatalogTest {

  @ParameterizedTest
  @CsvSource({
    "2x3, 1.5, 2.5",
    "2x4, 1.5, 3.5",
    "2x6, 1.5, 5.5",
    "2x8, 1.5, 7.25",
    "2x10, 1.5, 9.25",
    "2x12, 1.5, 11.25"
  })
  void sizesAreTheDressedOnes(String name, double breadth, double depth) {
    SoldTimber timber = TimberCatalog.find(name).orElseThrow();
    assertThat(timber.breadth()).isCloseTo(breadth * 25.4, within(1e-9));
    assertThat(timber.depth()).isCloseTo(depth * 25.4, within(1e-9));
  }

  /** 38.1 x 88.9 mm and 38.1 x 139.7 mm; 184.15 mm: worked from the same table. */
  @Test
  void millimetresAreExact() {
    assertThat(TimberCatalog.find("2x4"))
        .hasValueSatisfying(
            timber -> {
              assertThat(timber.breadth()).isEqualTo(38.1);
              assertThat(timber.depth()).isEqualTo(88.9);
            });
    assertThat(TimberCatalog.find("2x6").orElseThrow().depth()).isEqualTo(139.7);
    assertThat(TimberCatalog.find("2x8").orElseThrow().depth()).isEqualTo(184.15);
  }

  @Test
  void everyRowNamesItsSourceAndNoNameStandsTwice() {
    assertThat(TimberCatalog.all()).allSatisfy(row -> assertThat(row.source()).contains("NDS"));
    assertThat(TimberCatalog.all()).extracting(SoldTimber::name).doesNotHaveDuplicates();
  }

  @Test
  void othersAreNotThere() {
    assertThat(TimberCatalog.find("2x5")).isEmpty();
  }
}
