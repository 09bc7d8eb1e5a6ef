package plycrag.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plycrag.catalog.SoldScrew.Use;

class ScrewCatalogTest {

  /** ASME B18.6.1: numbers 8, 10, 12 and 14 in inches and millimetres, worked by hand. */
  @ParameterizedTest
  @CsvSource({
    "0.164, 4.166, SHEET",
    "0.190, 4.826, SHEET",
    "0.216, 5.486, SHEET",
    "0.242, 6.147, MEMBER"
  })
  void numberedScrewsAreAsThickAsTheStandardSays(double inches, double millimetres, Use use) {
    assertThat(inches * 25.4).isCloseTo(millimetres, within(0.0006));
    assertThat(ScrewCatalog.all())
        .filteredOn(screw -> screw.source().contains("ASME"))
        .filteredOn(screw -> Math.abs(screw.diameter() - inches * 25.4) < 0.0006)
        .isNotEmpty()
        .allMatch(screw -> screw.use() == use || use == Use.SHEET);
  }

  /** The formula of ASME B18.6.1 gives a whole number for every row that names it. */
  @Test
  void noRowThatNamesTheStandardIsBetweenTwoNumbers() {
    assertThat(ScrewCatalog.all())
        .filteredOn(screw -> screw.source().contains("ASME"))
        .allSatisfy(
            screw -> {
              double number = (screw.diameter() / 25.4 - 0.060) / 0.013;
              assertThat(number).isCloseTo(Math.rint(number), within(1e-3));
            });
  }

  @Test
  void everyRowHasItsSourceAndStandsOnce() {
    assertThat(ScrewCatalog.all()).allMatch(screw -> !screw.source().isBlank());
    assertThat(ScrewCatalog.all())
        .extracting(screw -> screw.use() + " " + screw.diameter() + " " + screw.length())
        .doesNotHaveDuplicates();
    assertThat(BoltCatalog.all()).allMatch(bolt -> !bolt.source().isBlank());
    assertThat(BoltCatalog.all())
        .extracting(bolt -> bolt.diameter() + " " + bolt.length())
        .doesNotHaveDuplicates();
  }

  @Test
  void theShortestThatReachesIsChosen() {
    assertThat(ScrewCatalog.shortest(Use.SHEET, 4.5, 52, 110).orElseThrow().length()).isEqualTo(60);
    assertThat(ScrewCatalog.shortest(Use.SHEET, 4.5, 50, 50).orElseThrow().length()).isEqualTo(50);
    assertThat(ScrewCatalog.shortest(Use.SHEET, 4.5, 81, 110)).isEmpty();
    assertThat(BoltCatalog.shortest(10, 101).orElseThrow().length()).isEqualTo(110);
  }
}
