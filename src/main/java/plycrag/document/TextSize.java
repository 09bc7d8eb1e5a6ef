package plycrag.document;

/**
 * How much room a line of text takes, by the advance widths of Liberation Sans: PDFs hold this
 * face, SVG names it first.
 *
 * <p>Pairs of letters are not kerned, as no PDF is. A browser kerns SVG, which makes lines
 * narrower: the font moves letters apart only where an apostrophe (’) follows f or r, by 0.04 em,
 * and in some pairs of Greek and Cyrillic letters, by 0.1 em at most.
 */
public final class TextSize {
  /**
   * The capitals' height in ems: 1409 of 2048 units (OS/2 table of the font, sCapHeight; unitsPerEm
   * of its head table).
   */
  public static final double CAPITALS = 1409.0 / 2048;

  /**
   * How wide a letter is that the font has not, ems. A browser takes it from another font, where
   * Chinese and Japanese letters fill a square; a PDF has a question mark, which is narrower.
   */
  static final double LACKING = 1;

  private static final LetterWidths WIDTHS = LetterWidths.ofFont();

  private TextSize() {}

  /** The width of a line whose capitals have a height, mm. */
  public static double width(String text, double height) {
    return ems(text) * height / CAPITALS;
  }

  /** The width of a line in ems. */
  static double ems(String text) {
    return text.codePoints().mapToDouble(TextSize::advance).sum();
  }

  private static double advance(int letter) {
    return WIDTHS.has(letter) ? WIDTHS.units(letter) / LetterWidths.EM : LACKING;
  }
}
