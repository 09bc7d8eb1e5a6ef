package plycrag.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import plycrag.TestFiles;
import plycrag.prices.Offer;
import plycrag.read.lists.PriceFile;

class PurchaseTest {
  private static List<Offer> offers(String rows) {
    String header = "article,size,unit,contents,price,currency,tax,mass\n";
    return PriceFile.read("prices.csv", TestFiles.bytes(header + rows))
        .value()
        .orElseThrow()
        .offers();
  }

  private static Purchase best(String rows, String quantity, double length) {
    return Purchase.best(offers(rows), new BigDecimal(quantity), length).orElseThrow();
  }

  /** 7.2 pieces are 8; 3 sticks of 4.25 m are 12.75 m; 101 are two packs of 100, 100 are one. */
  @Test
  void whatIsSoldIsCountedAsItIsSold() {
    assertThat(best("nut,,piece,,1,EUR,,\n", "7.2", 0).units()).isEqualByComparingTo("8");
    assertThat(best("timber,,metre,,2,EUR,,\n", "3", 4250).units()).isEqualByComparingTo("12.75");
    assertThat(best("nut,,pack,100,5,EUR,,\n", "101", 0).units()).isEqualByComparingTo("2");
    assertThat(best("nut,,pack,100,5,EUR,,\n", "100", 0).units()).isEqualByComparingTo("1");
  }

  /** 12.75 m at 2 are 25.50; 19 % of it are 4.845, rounded up to 4.85. */
  @Test
  void taxIsOnTheRoundedSum() {
    Purchase deal = best("timber,,metre,,2,EUR,19,1.5\n", "3", 4250);
    assertThat(deal.net()).contains(new BigDecimal("25.50"));
    assertThat(deal.cost()).contains(new BigDecimal("30.35"));
    // 12.75 m of 1.5 kg
    assertThat(deal.mass().orElseThrow()).isEqualByComparingTo("19.125");
  }

  /** 3 at 0.335 are 1.005, rounded to 1.01: 50 % of that are 0.505, rounded to 0.51; not 0.50. */
  @Test
  void halvesAreRoundedUpTwice() {
    Purchase deal = best("nut,,piece,,0.335,EUR,50,\n", "3", 0);
    assertThat(deal.net()).contains(new BigDecimal("1.01"));
    assertThat(deal.cost()).contains(new BigDecimal("1.52"));
  }

  /** 30 nuts: one by one 3.00, a pack of 50 at 2.90; with tax of 10 % the pack is 3.19. */
  @Test
  void theCheapestWithTaxIsTaken() {
    assertThat(best("nut,,piece,,0.1,EUR,,\nnut,,pack,50,2.9,EUR,,\n", "30", 0).soldAs())
        .isEqualTo("pack of 50");
    assertThat(best("nut,,piece,,0.1,EUR,,\nnut,,pack,50,2.9,EUR,10,\n", "30", 0).soldAs())
        .isEqualTo("piece");
  }

  /** Without any price the fewest packs; with one, what has it. */
  @Test
  void whatHasNoPriceComesLast() {
    assertThat(best("nut,,pack,10,,EUR,,\nnut,,pack,50,,EUR,,\n", "30", 0).soldAs())
        .isEqualTo("pack of 50");
    assertThat(best("nut,,pack,50,,EUR,,\nnut,,pack,10,99,EUR,,\n", "30", 0).soldAs())
        .isEqualTo("pack of 10");
    assertThat(best("nut,,pack,10,,EUR,,\n", "30", 0).cost()).isEmpty();
  }
}
