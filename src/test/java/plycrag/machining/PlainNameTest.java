package plycrag.machining;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNameTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "River bay 2.1_a-b|River bay 2.1_a-b",
        "Søndersø Höhle|S nders Hohle",
        "Bay) G0 Z-99 (x|Bay G0 Z-99 x",
        "a/b:c;d%e|a b c d e",
        "one two three four five six seven eight nine ten|one two three four five six seven eight",
      })
  void keepsWhatEveryControllerReads(String name, String plain) {
    assertThat(PlainName.of(name)).isEqualTo(plain);
  }

  @Property(tries = 500)
  void nothingElseStays(@ForAll String name) {
    assertThat(PlainName.of(name)).matches("([A-Za-z0-9._-]([A-Za-z0-9 ._-]{0,39}))?");
  }
}
