package plycrag.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The words of refusals: a part at fault, and a cure. */
class TrueWordsTest {
  @Test
  void aRefusalNamesAPartAndACure() {
    assertThat(
            TrueWords.lacking(
                """
                wall.toml: error: rule: ST1 overlaps PL2 by 4 mm; move it
                wall.toml: error: rule: facet main is too short; make it longer
                wall.toml: note: rule: nothing
                """))
        .isEmpty();
  }

  @Test
  void aRefusalWithoutEitherIsFound() {
    assertThat(TrueWords.lacking("wall.toml: error: rule: ST1 overlaps PL2 by 4 mm\n")).hasSize(1);
    assertThat(
            TrueWords.lacking("wall.toml: error: rule: something is too large; make it smaller\n"))
        .hasSize(1);
  }
}
