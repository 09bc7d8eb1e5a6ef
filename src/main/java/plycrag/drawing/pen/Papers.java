package plycrag.drawing.pen;

import java.util.List;
import java.util.stream.Stream;
import plycrag.document.PaperSize;
import plycrag.wall.Output.Paper;

/** The papers of a set of drawings: the smallest may stand upright, all may lie. */
final class Papers {
  private Papers() {}

  /** A paper and those of its kind that are larger, smallest first. */
  static List<PaperSize> from(Paper smallest) {
    return switch (smallest) {
      case A4 -> uprightFirst(PaperSize.ISO);
      case A3 -> lying(PaperSize.ISO.subList(1, PaperSize.ISO.size())).toList();
      case LETTER -> uprightFirst(PaperSize.AMERICAN);
      case TABLOID -> lying(PaperSize.AMERICAN.subList(1, PaperSize.AMERICAN.size())).toList();
    };
  }

  private static List<PaperSize> uprightFirst(List<PaperSize> sizes) {
    return Stream.concat(sizes.stream().limit(1), lying(sizes)).toList();
  }

  private static Stream<PaperSize> lying(List<PaperSize> sizes) {
    return sizes.stream().map(PaperSize::turned);
  }

  /** Whether third-angle projection is the habit where it is used. */
  static boolean isAmerican(Paper paper) {
    return paper == Paper.LETTER || paper == Paper.TABLOID;
  }
}
