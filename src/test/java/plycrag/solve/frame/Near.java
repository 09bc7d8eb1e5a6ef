package plycrag.solve.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

/** How near results come to what is published. */
final class Near {
  /** What closed forms are held to, as a part of them. */
  static final double CLOSED = 1e-9;

  private Near() {}

  /** To a part of what is expected; of nothing, to what sums of thousands leave. */
  static void closed(double actual, double expected) {
    double nothing = CLOSED * 1000;
    assertThat(actual)
        .isCloseTo(expected, within(expected == 0 ? nothing : CLOSED * Math.abs(expected)));
  }

  /** To half of the last digit that is printed, and what doubles lose. */
  static void printed(double actual, String digits) {
    BigDecimal value = new BigDecimal(digits.replace(" ", ""));
    double half = value.ulp().doubleValue() / 2;
    assertThat(actual).isCloseTo(value.doubleValue(), within(half * 1.000001));
  }

  /** Several, with their printed digits separated by semicolons. */
  static void printed(double[] actual, String digits) {
    String[] each = digits.split(";", -1);
    assertThat(actual).hasSameSizeAs(each);
    for (int i = 0; i < each.length; i++) {
      printed(actual[i], each[i].trim());
    }
  }
}
