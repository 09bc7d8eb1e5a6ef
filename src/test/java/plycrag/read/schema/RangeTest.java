package plycrag.read.schema;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RangeTest {

  @Test
  void bothEndsAreAllowed() {
    Range range = new Range(6, 40);
    assertThat(range.holds(6)).isTrue();
    assertThat(range.holds(40)).isTrue();
    assertThat(range.holds(5.9999)).isFalse();
    assertThat(range.holds(40.0001)).isFalse();
    assertThat(range.holds(Double.NaN)).isFalse();
  }

  @Test
  void hugeNumbersAreNotPrinted() {
    assertThat(new Range(6, 40).complaint(1e300, 1, "mm")).isEqualTo("the number is too great");
    assertThat(new Range(6, 40).complaint(-2, 1, "mm")).isEqualTo("-2 mm is too small");
  }

  /** Whoever enters a limit as it is shown must not be told that it is out of range. */
  @Property
  void theLimitsShownAreAllowed(
      @ForAll @DoubleRange(min = 0, max = 500) double least,
      @ForAll @DoubleRange(min = 501, max = 50_000) double greatest) {
    Range range = new Range(least, greatest);
    String[] words = range.words(25.4, "in").split(" ", -1);
    assertThat(range.holds(Double.parseDouble(words[0]) * 25.4 + 1e-6)).isTrue();
    assertThat(range.holds(Double.parseDouble(words[2]) * 25.4 - 1e-6)).isTrue();
  }
}
