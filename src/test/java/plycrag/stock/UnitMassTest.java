package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plycrag.prices.Article;

/** EN 338:2016, table 1: C24 weighs 420 kg/m³ on average; birch plywood 680 (from memory). */
class UnitMassTest {
  /** 0.045 · 0.09 · 4 = 0.0162 m³; 420 times that are 6.804 kg. */
  @Test
  void timberWeighsByItsSize() {
    UnitMass stick = UnitMass.timber(45, 90, 4000);
    assertThat(stick.volume()).isCloseTo(0.0162, within(1e-12));
    assertThat(stick.mass()).isCloseTo(6.804, within(1e-9));
  }

  /** 2.5 · 1.25 · 0.02 = 0.0625 m³; 680 times that are 42.5 kg. */
  @Test
  void aSheetWeighsByItsSize() {
    UnitMass sheet = UnitMass.plywood(2500, 1250, 20);
    assertThat(sheet.volume()).isCloseTo(0.0625, within(1e-12));
    assertThat(sheet.mass()).isCloseTo(42.5, within(1e-9));
  }

  @Test
  void theLongestSideIsWhatMustBeCarried() {
    assertThat(Sourcing.of(Article.TIMBER, 45.0, 4000.0, 90.0).length()).isEqualTo(4000);
    assertThat(Sourcing.of(Article.NUT).length()).isZero();
  }
}
