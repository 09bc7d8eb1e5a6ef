package plycrag.files.lint;

import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import plycrag.geometry.Tolerance;

/**
 * Papers that printers have; told anew, so that a mistake of the makers is not made twice.
 *
 * @param shorter side, mm
 * @param longer side, mm
 */
record PrinterPaper(double shorter, double longer) {
  private static final double MM = 25.4 / 72;

  /** ISO 216, A4 to A0; ASME Y14.1, A to E. */
  private static final List<PrinterPaper> SHEETS =
      List.of(
          new PrinterPaper(210, 297),
          new PrinterPaper(297, 420),
          new PrinterPaper(420, 594),
          new PrinterPaper(594, 841),
          new PrinterPaper(841, 1189),
          new PrinterPaper(215.9, 279.4),
          new PrinterPaper(279.4, 431.8),
          new PrinterPaper(431.8, 558.8),
          new PrinterPaper(558.8, 863.6),
          new PrinterPaper(863.6, 1117.6));

  /** 24 in, the commonest roll (common practice, no source). */
  private static final double ROLL = 609.6;

  private static PrinterPaper of(PDRectangle box) {
    double width = box.getWidth() * MM;
    double height = box.getHeight() * MM;
    return new PrinterPaper(Math.min(width, height), Math.max(width, height));
  }

  /** Whether a box, points, is one of them from its very corner. */
  static boolean isSold(PDRectangle box) {
    PrinterPaper paper = of(box);
    boolean roll = near(paper.shorter, ROLL) || near(paper.longer, ROLL);
    return box.getLowerLeftX() == 0
        && box.getLowerLeftY() == 0
        && (roll || SHEETS.stream().anyMatch(paper::isLike));
  }

  /** What it is, for a sentence. */
  static String words(PDRectangle box) {
    return Math.round(box.getWidth() * MM) + " x " + Math.round(box.getHeight() * MM) + " mm";
  }

  private boolean isLike(PrinterPaper other) {
    return near(shorter, other.shorter) && near(longer, other.longer);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < Tolerance.TOUCH;
  }
}
