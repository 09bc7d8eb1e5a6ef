package plycrag.files.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import plycrag.document.TextSize;

class PdfFontTest {
  private static double ems(String text) {
    return TextSize.width(text, TextSize.CAPITALS);
  }

  /** A PDF holds widths as whole thousandths of an em (ISO 32000-1, 9.7.4.3). */
  @Test
  void everyLetterTakesAsMuchOfALineAsInADrawing() throws IOException {
    try (PDDocument file = new PDDocument()) {
      PdfFont font = PdfFont.in(file);
      List<Integer> letters =
          IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
              .filter(letter -> font.letters().getGlyphId(letter) > 0)
              .boxed()
              .toList();
      assertThat(letters)
          .hasSizeGreaterThan(2000)
          .allSatisfy(
              letter -> {
                String text = Character.toString(letter);
                assertThat(font.width(text) * 1000)
                    .as(text)
                    .isCloseTo((double) Math.round(ems(text) * 1000), within(1e-9));
              });
    }
  }

  @Test
  void aLineIsAsWideAsItsLettersNotKerned() throws IOException {
    try (PDDocument file = new PDDocument()) {
      PdfFont font = PdfFont.in(file);
      assertThat(font.width("AVATAR")).isCloseTo(4 * 0.667 + 0.611 + 0.722, within(1e-9));
      assertThat(ems("AVATAR")).isCloseTo((4 * 1366 + 1251 + 1479) / 2048.0, within(1e-9));
    }
  }
}
