package plycrag.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What passes an opening with a turn before it. */
class OpeningTest {

  /** The ladder round the corner: (a^(2/3) + b^(2/3))^(3/2), a problem of every calculus book. */
  @ParameterizedTest
  @CsvSource({"800, 1000", "700, 2400", "900, 900"})
  void aThinBarIsTheLadderRoundTheCorner(double width, double passage) {
    double ladder = Math.pow(Math.cbrt(width * width) + Math.cbrt(passage * passage), 1.5);
    assertThat(new Opening(width, 2000, Optional.of(passage)).longest(0))
        .isCloseTo(ladder, within(0.01));
  }

  /** Where both are as wide it sticks at 45°: 2 √2 a less twice its thickness. */
  @ParameterizedTest
  @CsvSource({"1000, 45", "800, 90"})
  void aThickBarIsShorter(double width, double thickness) {
    assertThat(new Opening(width, 2000, Optional.of(width)).longest(thickness))
        .isCloseTo(2 * Math.sqrt(2) * width - 2 * thickness, within(0.01));
  }

  /** The same by trying every angle to a thousandth of a degree. */
  @ParameterizedTest
  @CsvSource({"762, 1100, 38", "1000, 3000, 120"})
  void aThickBarRoundAnUnevenCorner(double width, double passage, double thickness) {
    double least = Double.POSITIVE_INFINITY;
    for (int step = 1; step < 90_000; step++) {
      double angle = Math.toRadians(step / 1000.0);
      double sin = Math.sin(angle);
      double cos = Math.cos(angle);
      least = Math.min(least, (passage * sin + width * cos - thickness) / (sin * cos));
    }
    assertThat(new Opening(width, 2000, Optional.of(passage)).longest(thickness))
        .isCloseTo(least, within(0.01));
  }
}
