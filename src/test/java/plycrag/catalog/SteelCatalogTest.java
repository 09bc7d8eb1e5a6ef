package plycrag.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plycrag.catalog.FlatSteel.Shape;
import plycrag.catalog.SoldScrew.Use;

class SteelCatalogTest {

  @Test
  void everyRowHasItsSourceAndStandsOnce() {
    assertThat(SteelCatalog.all()).allMatch(steel -> !steel.source().isBlank());
    assertThat(SteelCatalog.all())
        .extracting(
            steel ->
                steel.shape()
                    + " "
                    + steel.legs().length()
                    + " "
                    + steel.legs().width()
                    + " "
                    + steel.holes().count())
        .doesNotHaveDuplicates();
  }

  /** The legs hold their holes, with room for a head around the last and beside the outer ones. */
  @Test
  void theHolesLieInTheLegs() {
    assertThat(SteelCatalog.all())
        .filteredOn(steel -> steel.shape() != Shape.HINGE)
        .allSatisfy(
            steel -> {
              assertThat(steel.last(steel.holes().count()) + steel.screws().metric())
                  .isLessThanOrEqualTo(steel.legs().length());
              assertThat(steel.holes().gauge() + 4 * steel.screws().metric())
                  .isLessThanOrEqualTo(steel.legs().width());
              assertThat(steel.holes().lines()).isEqualTo(steel.holes().gauge() > 0 ? 2 : 1);
            });
  }

  /**
   * EN 1995-1-1 Table 8.2, predrilled: 7 d to an end that a force across the grain does not point
   * at, 12 d where it runs with it; 8.3.1.4: 0.7 of 4 d or of 5 d between screws in steel.
   */
  @Test
  void theHolesKeepTheDistancesOfTheirScrews() {
    for (FlatSteel steel : SteelCatalog.BY_REQUIREMENT.of(Shape.ANGLE)) {
      assertThat(steel.holes().first()).isGreaterThanOrEqualTo(7 * steel.screws().metric());
      assertThat(steel.holes().pitch()).isGreaterThanOrEqualTo(0.7 * 4 * steel.screws().metric());
    }
    for (FlatSteel steel : SteelCatalog.BY_REQUIREMENT.of(Shape.STRAP)) {
      assertThat(steel.holes().first()).isGreaterThanOrEqualTo(12 * steel.screws().metric());
      assertThat(steel.holes().pitch()).isGreaterThanOrEqualTo(0.7 * 5 * steel.screws().metric());
    }
  }

  /** A screw that goes six diameters deep is sold for each piece, in millimetres and in inches. */
  @Test
  void screwsForThemAreSold() {
    for (FlatSteel steel : SteelCatalog.all()) {
      for (double diameter : new double[] {steel.screws().metric(), steel.screws().inch()}) {
        double least = steel.legs().thickness() + 6 * diameter;
        assertThat(ScrewCatalog.shortest(Use.BRACKET, diameter, least, least + 20))
            .as(steel.toString())
            .isPresent();
      }
    }
  }

  @Test
  void theThickestScrewsComeFirstAndThenTheSmallest() {
    FlatSteel first = SteelCatalog.BY_REQUIREMENT.of(Shape.ANGLE).get(0);
    assertThat(first.screws().metric()).isEqualTo(5);
    assertThat(first.legs().length()).isEqualTo(65);
  }

  /** Five screws in two lines need three rows: 35 + 2 × 20. */
  @Test
  void theLastHoleIsThatOfTheLastScrew() {
    FlatSteel steel =
        new FlatSteel(
            Shape.ANGLE,
            "",
            new FlatSteel.Legs(85, 40, 2),
            new FlatSteel.Holes(6, 2, 35, 20, 18),
            new FlatSteel.ScrewSizes(5, 5),
            "none");
    assertThat(steel.last(5)).isEqualTo(75);
    assertThat(steel.last(4)).isEqualTo(55);
    assertThat(steel.last(2)).isEqualTo(35);
  }
}
