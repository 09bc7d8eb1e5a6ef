package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import plycrag.prices.Article;

class NeedTest {
  /** 5 % of 20 are 1, of 40 are 2; what is begun is a whole one (common practice, no source). */
  @Test
  void aSpareIsFivePercentAndAWholePieceAtLeast() {
    assertThat(spare(0)).isZero();
    assertThat(spare(1)).isEqualTo(1);
    assertThat(spare(20)).isEqualTo(1);
    assertThat(spare(21)).isEqualTo(2);
    assertThat(spare(40)).isEqualTo(2);
    assertThat(spare(41)).isEqualTo(3);
    assertThat(Need.Amount.pieces(41).spare()).isZero();
  }

  private static int spare(int count) {
    return Need.Amount.withSpare(count).spare();
  }

  @Test
  void allOfItIsWhatIsTakenAndTheSpare() {
    assertThat(Need.Amount.withSpare(54).all()).isEqualByComparingTo("57");
    assertThat(new Need.Amount(new BigDecimal("0.3"), "litre", 0).all())
        .isEqualByComparingTo("0.3");
  }

  @Test
  void aPartOfAWantKeepsTheRest() {
    Need want =
        new Need(
            "screws", "screw", "4 x 40", Need.Amount.pieces(7), Sourcing.of(Article.NUT), "zinc");
    assertThat(want.taking(BigDecimal.valueOf(2), 1))
        .isEqualTo(
            new Need(
                "screws",
                "screw",
                "4 x 40",
                new Need.Amount(BigDecimal.valueOf(2), "piece", 1),
                Sourcing.of(Article.NUT),
                "zinc"));
    assertThat(want.lacking().what()).isEqualTo("screw, beyond what is available");
    assertThat(want.noting("steel").note()).isEqualTo("steel");
  }
}
