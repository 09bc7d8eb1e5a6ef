package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.prices.Offer;
import plycrag.read.lists.PriceFile;

class PackMixTest {
  private static List<String> mixed(String rows, int quantity) {
    String header = "article,size,unit,contents,price,currency\n";
    List<Offer> offers =
        PriceFile.read("prices.csv", TestFiles.bytes(header + rows)).value().orElseThrow().offers();
    BigDecimal wanted = BigDecimal.valueOf(quantity);
    Purchase alone = Purchase.best(offers, wanted, 0).orElseThrow();
    return PackMix.of(alone, offers, wanted).stream()
        .map(
            deal ->
                deal.units().toPlainString()
                    + " "
                    + deal.soldAs()
                    + " "
                    + deal.cost().orElseThrow())
        .toList();
  }

  /** 60: one of 100 for 20, two of 50 for 8, six of 10 for 6; one of 50 and one of 10 for 5. */
  @Test
  void theLargestPackNeedNotBeInIt() {
    assertThat(mixed("nut,,pack,100,20,EUR\nnut,,pack,50,4,EUR\nnut,,pack,10,1,EUR\n", 60))
        .containsExactly("1 pack of 50 4.00", "1 pack of 10 1.00");
  }

  /** 60: six of 10 cost 6, and so do one of 50 for 5 and one of 10: one kind is simpler. */
  @Test
  void aMixThatSavesNothingIsNone() {
    assertThat(mixed("nut,,pack,50,5,EUR\nnut,,pack,10,1,EUR\n", 60))
        .containsExactly("6 pack of 10 6.00");
  }

  /** 53: one of 50 for 15 and three single ones at 1.20 are 18.60; two of 50 are 30. */
  @Test
  void singlePiecesFillWhatPacksLeave() {
    assertThat(mixed("nut,,pack,50,15,EUR\nnut,,piece,,1.2,EUR\n", 53))
        .containsExactly("1 pack of 50 15.00", "3 piece 3.60");
  }

  /** 120: two of 50 for 15 and two of 10 for 4 are 38; three of 50 are 45, twelve of 10 48. */
  @Test
  void severalOfEachMayBeTaken() {
    assertThat(mixed("nut,,pack,50,15,EUR\nnut,,pack,10,4,EUR\n", 120))
        .containsExactly("2 pack of 50 30.00", "2 pack of 10 8.00");
  }

  /** 300 hundredths are not less than 299: a plan is least where nothing costs less. */
  @Test
  void anOutlayIsLeastWhereItMeetsItsBound() {
    assertThat(new Outlay.OfLength(6000, 6000).isLeast()).isTrue();
    assertThat(new Outlay.OfLength(6000, 5999.9).isLeast()).isFalse();
    BigDecimal three = new BigDecimal("3.00");
    assertThat(new Outlay.OfMoney(three, new BigDecimal("3.0"), "EUR").isLeast()).isTrue();
    assertThat(new Outlay.OfMoney(three, new BigDecimal("2.99"), "EUR").isLeast()).isFalse();
  }
}
