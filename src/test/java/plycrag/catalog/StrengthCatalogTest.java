package plycrag.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rows against EN 338:2016, Table 1, as two independent public copies print it. */
class StrengthCatalogTest {
  @Test
  void valuesAreThoseOfTheEditionOf2016() {
    StrengthClass c24 = StrengthCatalog.find("C24").orElseThrow();
    assertThat(c24.shear()).isEqualTo(4.0); // 2.5 in the edition of 2003
    assertThat(c24.tension()).isEqualTo(14.5); // 14 there
    assertThat(c24.density()).isEqualTo(350);
    assertThat(StrengthCatalog.find("C30").orElseThrow().stiffness().mean()).isEqualTo(12_000);
  }

  @Test
  void whatOnlyLooksLikeAClassIsNone() {
    assertThat(StrengthCatalog.find("c24")).isEmpty();
    assertThat(StrengthCatalog.find("C24 or better")).isEmpty();
    assertThat(StrengthCatalog.find("MGP10")).isEmpty();
  }

  @Test
  void strongerClassesAreNowhereWeaker() {
    StrengthClass before = StrengthCatalog.all().get(0);
    for (StrengthClass one : StrengthCatalog.all()) {
      assertThat(one.bending()).isGreaterThanOrEqualTo(before.bending());
      assertThat(one.shear()).isGreaterThanOrEqualTo(before.shear());
      assertThat(one.stiffness().fifth()).isGreaterThanOrEqualTo(before.stiffness().fifth());
      assertThat(one.source()).contains("EN 338:2016");
      before = one;
    }
  }
}
