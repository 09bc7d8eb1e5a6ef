package plycrag.files.lint;

import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Papers that printers have; told anew, so that a mistake of the makers is not made twice.
 *
 * @param shorter side, mm
 * @param longer side, mm
 */
record Paper(double shorter, double longer) {
  private static final double MM = 25.4 / 72;
  private static final double NEAR = 0.01;

  /** ISO 216, A4 to A0; ASME Y14.1, A to E. */
  private static final List<Paper> SHEETS =
      List.of(
          new Paper(210, 297),
          new Paper(297, 420),
          new Paper(420, 594),
          new Paper(594, 841),
          new Paper(841, 1189),
          new Paper(215.9, 279.4),
          new Paper(279.4, 431.8),
          new Paper(431.8, 558.8),
          new Paper(558.8, 863.6),
          new Paper(863.6, 1117.6));

  /** 24 in, the commonest roll (common practice, no source). */
  private static final double ROLL = 609.6;

  private static Paper of(PDRectangle box) {
    double width = box.getWidth() * MM;
    double height = box.getHeight() * MM;
    return new Paper(Math.min(width, height), Math.max(width, height));
  }

  /** Whether a box, points, is one of them from its very corner. */
  static boolean isSold(PDRectangle box) {
    Paper paper = of(box);
    boolean roll = near(paper.shorter, ROLL) || near(paper.longer, ROLL);
    return box.getLowerLeftX() == 0
        && box.getLowerLeftY() == 0
        && (roll || SHEETS.stream().anyMatch(paper::isLike));
  }

  /** What it is, for a sentence. */
  static String words(PDRectangle box) {
    return Math.round(box.getWidth() * MM) + " x " + Math.round(box.getHeight() * MM) + " mm";
  }

  private boolean isLike(Paper other) {
    return near(shorter, other.shorter) && near(longer, other.longer);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < NEAR;
  }
}
