package plycrag.units;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestWordTest {

  /** Textbook examples of edit distances; ca to abc is 3 in the restricted one (from memory). */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "flaw, lawn, 2",
    "ca, abc, 3",
    "angel, angle, 1",
    "'', hole, 4"
  })
  void countsEdits(String from, String to, int distance) {
    assertThat(NearestWord.distance(from, to)).isEqualTo(distance);
  }

  @Property(tries = 200)
  void isTheSameBothWays(
      @ForAll @AlphaChars @StringLength(max = 12) String from,
      @ForAll @AlphaChars @StringLength(max = 12) String to) {
    assertThat(NearestWord.distance(from, to)).isEqualTo(NearestWord.distance(to, from));
  }
}
