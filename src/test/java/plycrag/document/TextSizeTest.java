package plycrag.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextSizeTest {
  private static final EmbeddedFont FONT = EmbeddedFont.read();

  /** Widths in units of the font, read from its hmtx table with fontTools. */
  @ParameterizedTest
  @CsvSource({"½, 1708", "&, 1366", "+, 1196", "Æ, 2048", "Ж, 1891", "ST1, 3756", "'  ', 1138"})
  void aLineIsAsWideAsItsLetters(String text, int units) {
    assertThat(TextSize.ems(text) * 2048).isCloseTo(units, within(1e-9));
    assertThat(TextSize.width(text, 1409)).isCloseTo(units, within(1e-9));
  }

  @Test
  void everyLetterOfTheFontIsAsWideAsTheFontSays() {
    LetterWidths widths = LetterWidths.ofFont();
    assertThat(EmbeddedFont.everyLetter().filter(letter -> widths.has(letter) != FONT.has(letter)))
        .isEmpty();
    assertThat(EmbeddedFont.everyLetter().filter(FONT::has).boxed())
        .hasSizeGreaterThan(2000)
        .allSatisfy(
            letter -> {
              String text = Character.toString(letter);
              assertThat(widths.units(letter)).as(text).isEqualTo(FONT.units(letter));
            });
  }

  @Test
  void theTableIsWhatTheFontMakes() throws IOException {
    try (InputStream table = LetterWidths.class.getResourceAsStream(LetterWidths.FILE)) {
      assertThat(new String(table.readAllBytes(), StandardCharsets.UTF_8)).isEqualTo(FONT.table());
    }
  }

  @Test
  void capitalsAreAsHighAsTheFontSays() throws IOException {
    assertThat(TextSize.CAPITALS)
        .isEqualTo(FONT.font().getOS2Windows().getCapHeight() / LetterWidths.EM);
    assertThat(FONT.font().getUnitsPerEm()).isEqualTo((int) LetterWidths.EM);
  }

  /** Also a letter of two halves, 𠮷, is one letter. */
  @Test
  void aLetterThatTheFontHasNotFillsASquare() {
    assertThat(TextSize.ems("舟")).isEqualTo(1);
    assertThat(TextSize.ems("\uD842\uDFB7")).isEqualTo(1);
    assertThat(FONT.units('?')).isLessThan((int) LetterWidths.EM);
  }
}
