package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignificantTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.455733, 0.456",
    "4.01449, 4.01",
    "33.6789, 33.7",
    "3364.4, 3364",
    "-0.0123456, -0.0123",
    "0.0000012, 0.000001"
  })
  void threeFiguresAreShown(double value, String shown) {
    assertThat(Significant.of(value)).isEqualTo(shown);
  }
}
