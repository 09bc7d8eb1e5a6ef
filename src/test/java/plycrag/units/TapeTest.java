package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeTest {
  private static final Tape MM = new Tape(LengthUnit.MM);
  private static final Tape INCHES = new Tape(LengthUnit.IN);

  @Test
  void marksToAMillimetreHalvesUp() {
    assertThat(MM.snap(22.5)).isEqualTo(23);
    assertThat(MM.snap(22.49)).isEqualTo(22);
    assertThat(MM.snapDown(22.99)).isEqualTo(22);
    assertThat(MM.snapUp(22.01)).isEqualTo(23);
    assertThat(MM.snapUp(22)).isEqualTo(22);
  }

  @Test
  void marksToASixteenthOfAnInch() {
    assertThat(INCHES.snap(25.4 + 0.9)).isCloseTo(25.4 * 17 / 16, within(1e-9));
    assertThat(INCHES.snapDown(25.4 * 1.99)).isCloseTo(25.4 * 31 / 16, within(1e-9));
  }

  /** 560 and 2350 mm are read as 56/235; a half goes up. */
  @ParameterizedTest
  @CsvSource({"560, 56", "2350, 235", "565, 57", "564.9, 56", "4, 0", "5, 1"})
  void namesHolesByCentimetres(double place, String reading) {
    assertThat(MM.division(place)).isEqualTo(reading);
  }

  @Test
  void namesHolesByInchesInInchFiles() {
    assertThat(INCHES.division(8.5 * 25.4)).isEqualTo("9");
    assertThat(INCHES.division(8.4 * 25.4)).isEqualTo("8");
    assertThat(MM.fineDivision(563)).isEqualTo("56.3");
    assertThat(INCHES.fineDivision(22.0625 * 25.4)).isEqualTo("22-1/16");
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "1, 1",
    "0.5, 1/2",
    "20.9375, 20 15/16",
    "15.25, 15 1/4",
    "-0.75, -3/4",
    "46.5625, 46 9/16"
  })
  void readsInchesInFractions(double inches, String reading) {
    assertThat(INCHES.reading(inches * 25.4)).isEqualTo(reading);
    assertThat(INCHES.text(inches * 25.4)).isEqualTo(reading + " in");
  }

  /**
   * Halves of a sixteenth, which binary numbers miss by a hair: the reading is the marked place's.
   */
  @Test
  void aReadingIsThatOfTheMarkedPlace() {
    for (int half = 1; half < 4000; half += 2) {
      double place = half * 25.4 / 32;
      assertThat(INCHES.reading(place)).isEqualTo(INCHES.reading(INCHES.snap(place)));
    }
  }

  /** A size is told as it is: 23/32 in is not 3/4 in, and 0.19 in is no fraction. */
  @Test
  void sizesAreNotRoundedToTheTape() {
    assertThat(INCHES.size(25.4 * 23 / 32)).isEqualTo("23/32 in");
    assertThat(INCHES.size(25.4 * 0.19)).isEqualTo("0.19 in");
    assertThat(INCHES.size(25.4 * 1.5)).isEqualTo("1 1/2 in");
    assertThat(MM.size(18.25)).isEqualTo("18.25 mm");
  }
}
