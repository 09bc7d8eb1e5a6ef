package plycrag.document;

import java.util.List;

/**
 * A size of paper, as it lies before the reader. The constants stand upright.
 *
 * @param width mm
 * @param height mm
 */
public record PaperSize(double width, double height) {
  /** ISO 216. */
  public static final PaperSize A4 = new PaperSize(210, 297);

  /** ISO 216. */
  public static final PaperSize A3 = new PaperSize(297, 420);

  /** ASME Y14.1, size A. */
  public static final PaperSize LETTER = new PaperSize(215.9, 279.4);

  /** ISO 216 from A4 to A0, each twice the one before it. */
  public static final List<PaperSize> ISO =
      List.of(A4, A3, new PaperSize(420, 594), new PaperSize(594, 841), new PaperSize(841, 1189));

  /** ASME Y14.1 from A to E: Letter, Tabloid and the larger ones. */
  public static final List<PaperSize> AMERICAN =
      List.of(LETTER, inches(11, 17), inches(17, 22), inches(22, 34), inches(34, 44));

  /** The width of the commonest roll, 24 in (common practice, no source), mm. */
  public static final double ROLL = 609.6;

  private static PaperSize inches(double width, double height) {
    return new PaperSize(width * 25.4, height * 25.4);
  }

  /** The same turned by a quarter. */
  public PaperSize turned() {
    return new PaperSize(/* width= */ height, /* height= */ width);
  }
}
