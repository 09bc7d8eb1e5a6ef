package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotBlank;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The inch is 25.4 mm and the foot 12 inches: International yard and pound agreement of 1959. */
class LengthTextTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      textBlock =
          """
          2.4 m | 2400
          18mm | 18
          18 mm | 18
          2.5 cm | 25
          3/4 in | 19.05
          23/32 in | 18.25625
          2 1/2 in | 63.5
          2-1/2 in | 63.5
          8 ft | 2438.4
          8 ft 2 1/2 in | 2501.9
          8ft2in | 2489.2
          8' 2 1/2" | 2501.9
          8'-2" | 2489.2
          ` 7/16" ` | 11.1125
          -5 mm | -5
          -1 ft 6 in | -457.2
          0.1 in | 2.54
          """)
  void readsWhatBuildersWrite(String text, double millimetres) {
    assertThat(LengthText.parse(text)).isEqualTo(new LengthText.Value(millimetres));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      textBlock =
          """
          18 | "18" has no unit
          8' 2 | "2" has no unit
          18 mil | "mil" is not a unit of length
          18 MM | "MM" is not a unit of length
          18 mm² | "mm²" is not a unit of length
          2,5 cm | "2,5" has a decimal comma
          8 ft 2,5 in | "2,5" has a decimal comma
          .5 in | ".5" is not a number
          1.2.3 m | "1.2.3" is not a number
          3/0 in | "3/0" is not a number
          1 2 mm | "1 2" is not a number
          1e3 mm | "e" is not a unit of length
          thick | "thick" is not a number with a unit
          mm | "mm" is not a number with a unit
          `` | "" is not a number with a unit
          --5 mm | "--5 mm" is not a number with a unit
          NaN mm | "NaN mm" is not a number with a unit
          2 m 40 cm | "2 m 40 cm" is more than one length
          2 in 1 ft | "2 in 1 ft" is more than one length
          """)
  void saysWhatIsWrong(String text, String wrong) {
    assertThat(LengthText.parse(text))
        .isInstanceOfSatisfying(
            LengthText.Fault.class, fault -> assertThat(fault.wrong()).isEqualTo(wrong));
  }

  @Property
  void readsEveryTapeReadingInInches(@ForAll @IntRange(min = -9999, max = 9999) int sixteenths) {
    double millimetres = sixteenths * 25.4 / 16;
    assertThat(millimetres(new Tape(LengthUnit.IN).text(millimetres)))
        .isCloseTo(millimetres, within(1e-9));
  }

  @Property
  void readsEveryPrintedMillimetre(@ForAll @IntRange(min = -999_999, max = 999_999) int tenths) {
    assertThat(millimetres(Decimal.of(tenths / 10.0, 1) + " mm")).isEqualTo(tenths / 10.0);
  }

  @Property
  void feetAndInchesAddUp(
      @ForAll @IntRange(max = 200) int feet, @ForAll @IntRange(max = 11) int inches) {
    assertThat(millimetres(feet + " ft " + inches + " in"))
        .isEqualTo(millimetres(feet + "' " + inches + "\""))
        .isCloseTo((feet * 12 + inches) * 25.4, within(1e-9));
  }

  @Property
  void bareNumberAndTextAgree(@ForAll @DoubleRange(min = 0, max = 9999) double number) {
    String printed = Decimal.of(number, 4);
    assertThat(LengthText.millimetres(Double.parseDouble(printed), LengthUnit.IN))
        .isEqualTo(millimetres(printed + " in"));
  }

  @Property
  void anyTextGivesAnAnswer(@ForAll @NotBlank String text) {
    assertThat(LengthText.parse(text)).isNotNull();
  }

  private static double millimetres(String text) {
    return ((LengthText.Value) LengthText.parse(text)).millimetres();
  }
}
