package plycrag.drawing.template;

import java.util.List;
import plycrag.document.PaperSize;
import plycrag.wall.Output.TemplatePaper;

/**
 * The paper of a tile.
 *
 * @param width mm
 * @param height mm
 */
record TileSize(double width, double height) {
  /** What printers leave white at an edge, with some to spare (common practice, no source), mm. */
  static final double MARGIN = 10;

  /** Room for the words below what a tile shows, mm. */
  static final double STRIP = 24;

  /**
   * The sizes to choose from.
   *
   * @param length of the sheet's longer side, which one page of a roll shows whole, mm
   */
  static List<TileSize> of(TemplatePaper paper, double length) {
    return switch (paper) {
      case A4 -> bothWays(PaperSize.A4);
      case A3 -> bothWays(PaperSize.A3);
      case LETTER -> bothWays(PaperSize.LETTER);
      case ROLL -> {
        double whole = length + 2 * TilePlan.LAP;
        yield List.of(
            new TileSize(PaperSize.ROLL, whole + 2 * MARGIN + STRIP),
            new TileSize(whole + 2 * MARGIN, PaperSize.ROLL));
      }
    };
  }

  /** The paper of the page that shows how tiles lie. */
  static TileSize ofMap(TemplatePaper paper) {
    return paper == TemplatePaper.ROLL ? of(PaperSize.A4) : of(paper, 0).get(0);
  }

  private static List<TileSize> bothWays(PaperSize paper) {
    return List.of(of(paper), of(paper.turned()));
  }

  private static TileSize of(PaperSize paper) {
    return new TileSize(paper.width(), paper.height());
  }

  /** The tiles on this paper. */
  TilePlan plan(double around) {
    return new TilePlan(width - 2 * MARGIN, height - 2 * MARGIN - STRIP, around);
  }
}
