package plycrag.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The font that comes with PDFBox and that the PDFs hold, as FontBox reads it: what the table of
 * widths is made from.
 *
 * @param font its tables
 * @param letters which glyph a letter has; glyph 0 stands for none
 */
record EmbeddedFont(TrueTypeFont font, CmapLookup letters) {
  private static final String RESOURCE =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  static EmbeddedFont read() {
    try (InputStream bytes = PDDocument.class.getResourceAsStream(RESOURCE)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
      return new EmbeddedFont(font, font.getUnicodeCmapLookup());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Every number that a letter may have. */
  static IntStream everyLetter() {
    return IntStream.rangeClosed(0, Character.MAX_CODE_POINT);
  }

  boolean has(int letter) {
    return letters.getGlyphId(letter) > 0;
  }

  /** How far the letter takes a line, by the font's hmtx table. */
  int units(int letter) {
    try {
      return font.getAdvanceWidth(letters.getGlyphId(letter));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The table of {@link LetterWidths}. */
  String table() {
    StringBuilder table = new StringBuilder(remarks());
    everyLetter()
        .filter(first -> first % LetterWidths.ROW == 0)
        .filter(first -> row(first).anyMatch(this::has))
        .forEach(first -> table.append(line(first)).append('\n'));
    return table.toString();
  }

  private String remarks() {
    try {
      return """
          # How far each letter takes a line, in units of which 2048 are an em: in a row the
          # hexadecimal code of its first letter, then the widths of 16 letters from there on,
          # a dot for one that the font has not.
          # Source: the cmap and hmtx tables of Liberation Sans, %s,
          # as it comes with PDFBox.
          # Made by: .ci/letter-widths
          """
          .formatted(font.getNaming().getName(5, 3, 1, 0x409));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static IntStream row(int first) {
    return IntStream.range(first, first + LetterWidths.ROW);
  }

  private String line(int first) {
    return row(first)
        .mapToObj(letter -> has(letter) ? String.valueOf(units(letter)) : LetterWidths.NONE)
        .map("%4s"::formatted)
        .collect(Collectors.joining(" ", "%04X ".formatted(first), ""));
  }

  /** Prints the table. */
  public static void main(String... none) {
    System.out.print(read().table());
  }
}
