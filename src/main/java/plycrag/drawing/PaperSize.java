package plycrag.drawing;

import java.util.List;
import plycrag.params.OutputParameters.Paper;

/**
 * A size of paper, as it lies before the reader: the ISO A series (ISO 216), or Letter, Tabloid and
 * the larger sheets of ASME Y14.1.
 *
 * @param width mm
 * @param height mm
 */
record PaperSize(double width, double height) {
  private static final double INCH = 25.4;

  private static final List<PaperSize> ISO =
      List.of(
          new PaperSize(210, 297),
          new PaperSize(297, 210),
          new PaperSize(420, 297),
          new PaperSize(594, 420),
          new PaperSize(841, 594),
          new PaperSize(1189, 841));

  private static final List<PaperSize> AMERICAN =
      List.of(
          inches(8.5, 11),
          inches(11, 8.5),
          inches(17, 11),
          inches(22, 17),
          inches(34, 22),
          inches(44, 34));

  private static PaperSize inches(double width, double height) {
    return new PaperSize(width * INCH, height * INCH);
  }

  /** A paper and those of its kind that are larger, smallest first. */
  static List<PaperSize> from(Paper smallest) {
    return switch (smallest) {
      case A4 -> ISO;
      case A3 -> ISO.subList(2, ISO.size());
      case LETTER -> AMERICAN;
      case TABLOID -> AMERICAN.subList(2, AMERICAN.size());
    };
  }

  /** Whether third-angle projection is the habit where it is used. */
  static boolean isAmerican(Paper paper) {
    return paper == Paper.LETTER || paper == Paper.TABLOID;
  }
}
