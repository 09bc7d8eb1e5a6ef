package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

  @ParameterizedTest
  @CsvSource({
    "0, 4, 0",
    "-0.0, 4, 0",
    "-0.00001, 4, 0",
    "532.5, 4, 532.5",
    "2400, 3, 2400",
    "0.0005, 3, 0.001",
    "-0.0005, 3, -0.001",
    "1e-7, 4, 0",
    "123456789.12345, 4, 123456789.1235",
    "99.9999, 3, 100",
    "-0.0000015, 6, -0.000002",
    "2.345678, 6, 2.345678"
  })
  void printsPlainNumbers(double value, int decimals, String text) {
    assertThat(Decimal.of(value, decimals)).isEqualTo(text);
  }

  /** Against exact decimal arithmetic; a half of the last digit may fall either way in binary. */
  @Property(tries = 1000)
  void isTheNearestDecimal(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
      @ForAll @IntRange(max = 6) int decimals) {
    BigDecimal printed = new BigDecimal(Decimal.of(value, decimals));
    BigDecimal off = printed.subtract(new BigDecimal(value)).abs();
    assertThat(off).isLessThanOrEqualTo(BigDecimal.valueOf(0.5000001).movePointLeft(decimals));
    assertThat(printed.scale()).isLessThanOrEqualTo(decimals);
    assertThat(printed.setScale(decimals, RoundingMode.UNNECESSARY)).isEqualByComparingTo(printed);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e12})
  void refusesWhatNoFileMayHold(double value) {
    assertThatThrownBy(() -> Decimal.of(value, 2)).isInstanceOf(IllegalArgumentException.class);
  }
}
