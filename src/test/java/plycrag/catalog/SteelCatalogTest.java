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
            steel -> steel.shape() + " " + steel.leg() + " " + steel.width() + " " + steel.holes())
        .doesNotHaveDuplicates();
  }

  /** The legs hold their holes, with room for a head around the last and beside the outer ones. */
  @Test
  void theHolesLieInTheLegs() {
    assertThat(SteelCatalog.all())
        .filteredOn(steel -> steel.shape() != Shape.HINGE)
        .allSatisfy(
            steel -> {
              assertThat(steel.last(steel.holes()) + steel.screw())
                  .isLessThanOrEqualTo(steel.leg());
              assertThat(steel.gauge() + 4 * steel.screw()).isLessThanOrEqualTo(steel.width());
              assertThat(steel.lines()).isEqualTo(steel.gauge() > 0 ? 2 : 1);
            });
  }

  /**
   * EN 1995-1-1 Table 8.2, predrilled: 7 d to an end that a force across the grain does not point
   * at, 12 d where it runs with it; 8.3.1.4: 0.7 of 4 d or of 5 d between screws in steel.
   */
  @Test
  void theHolesKeepTheDistancesOfTheirScrews() {
    for (FlatSteel steel : SteelCatalog.of(Shape.ANGLE)) {
      assertThat(steel.first()).isGreaterThanOrEqualTo(7 * steel.screw());
      assertThat(steel.pitch()).isGreaterThanOrEqualTo(0.7 * 4 * steel.screw());
    }
    for (FlatSteel steel : SteelCatalog.of(Shape.STRAP)) {
      assertThat(steel.first()).isGreaterThanOrEqualTo(12 * steel.screw());
      assertThat(steel.pitch()).isGreaterThanOrEqualTo(0.7 * 5 * steel.screw());
    }
  }

  /** A screw that goes six diameters deep is sold for each piece, in millimetres and in inches. */
  @Test
  void screwsForThemAreSold() {
    for (FlatSteel steel : SteelCatalog.all()) {
      for (double diameter : new double[] {steel.screw(), steel.inchScrew()}) {
        double least = steel.thickness() + 6 * diameter;
        assertThat(ScrewCatalog.shortest(Use.BRACKET, diameter, least, least + 20))
            .as(steel.toString())
            .isPresent();
      }
    }
  }

  @Test
  void theThickestScrewsComeFirstAndThenTheSmallest() {
    FlatSteel first = SteelCatalog.of(Shape.ANGLE).get(0);
    assertThat(first.screw()).isEqualTo(5);
    assertThat(first.leg()).isEqualTo(65);
  }

  /** Five screws in two lines need three rows: 35 + 2 × 20. */
  @Test
  void theLastHoleIsThatOfTheLastScrew() {
    FlatSteel steel = new FlatSteel(Shape.ANGLE, 85, 40, 2, 6, 2, 35, 20, 18, 5, 5, "none");
    assertThat(steel.last(5)).isEqualTo(75);
    assertThat(steel.last(4)).isEqualTo(55);
    assertThat(steel.last(2)).isEqualTo(35);
  }
}
