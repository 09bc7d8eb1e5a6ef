package plycrag.drawing.pen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scales of ISO 5455 on A4 to A0 (ISO 216), by hand. */
class ScaleTest {
  /** A view has 150 by 140 mm of an A4 page. */
  @ParameterizedTest
  @CsvSource({"150, 140, 1", "151, 140, 2", "2440, 1220, 20", "6000, 2400, 50"})
  void viewsFitA4(double width, double height, int scale) {
    assertThat(Scale.fitting(width, height)).isEqualTo(scale);
  }

  /** Readings 4 mm apart would ask for true size, which no paper has for a sheet. */
  @ParameterizedTest
  @CsvSource({"2440, 1220, 4, 5", "2440, 1220, 40, 10", "2440, 1220, 200, 20", "300, 150, 4, 1"})
  void readingsAskForLargerPagesUpToTheLargest(
      double width, double height, double least, int scale) {
    assertThat(Scale.legible(width, height, least)).isEqualTo(scale);
  }

  /** A0 has room for 20 m at 1:20. */
  @ParameterizedTest
  @CsvSource({"2440, 2400, 20", "20000, 3000, 20", "20001, 3000, 50", "1400, 1400, 10"})
  void viewsAreNoSmallerThanTheLargestPaperAllows(double width, double height, int scale) {
    assertThat(Scale.fitting(width, height, 20)).isEqualTo(scale);
  }
}
