package plycrag.drawing;

import java.util.List;
import plycrag.params.OutputParameters.TemplatePaper;

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

  private static final TileSize A4 = new TileSize(210, 297);
  private static final double ROLL = 609.6;

  /**
   * The sizes to choose from.
   *
   * @param length of the sheet's longer side, which one page of a roll shows whole, mm
   */
  static List<TileSize> of(TemplatePaper paper, double length) {
    return switch (paper) {
      case A4 -> A4.bothWays();
      case A3 -> new TileSize(297, 420).bothWays();
      case LETTER -> new TileSize(215.9, 279.4).bothWays();
      case ROLL -> {
        double whole = length + 2 * TilePlan.LAP;
        yield List.of(
            new TileSize(ROLL, whole + 2 * MARGIN + STRIP), new TileSize(whole + 2 * MARGIN, ROLL));
      }
    };
  }

  /** The paper of the page that shows how tiles lie. */
  static TileSize ofMap(TemplatePaper paper) {
    return paper == TemplatePaper.ROLL ? A4 : of(paper, 0).get(0);
  }

  private List<TileSize> bothWays() {
    return List.of(this, new TileSize(/* width= */ height, /* height= */ width));
  }

  /** The tiles on this paper. */
  TilePlan plan(double around) {
    return new TilePlan(width - 2 * MARGIN, height - 2 * MARGIN - STRIP, around);
  }
}
