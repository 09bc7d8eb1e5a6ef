package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Print;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.flat.SheetTape;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.sheets.MachinedHole;
import plycrag.wall.Output.TemplatePaper;

/**
 * A sheet's holes at true size, to drill through paper: on tiles for a printer, with a page that
 * shows how they lie, and whole for a plotter.
 */
final class SheetTiles {
  /** How much of the sheet around a hole is printed with it, mm. */
  private static final double AROUND = 6;

  /** The lines of the strip below what a tile shows, above the paper's edge, mm. */
  private static final double[] LINES = {25, 21, 17, 13};

  private static final double BAR = 30;

  private final CheckedLayout checked;
  private final TemplateSheet sheet;
  private final SheetTape tape;

  /** The template of sheets that are drilled alike. */
  SheetTiles(CheckedLayout checked, TemplateSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
    this.tape = new SheetTape(sheet.datum(), checked.layout().wall().tape());
  }

  /** The whole sheet, its holes with their readings, and bars to measure the print by. */
  Drawing whole() {
    Sketch sketch = new Sketch(1);
    sheet.draw(sketch);
    Envelope stock = stock();
    drawHoles(sketch, sheet.first().inserts(), stock.getMaxX());
    double low = -PrintBars.ROOM - 5;
    PrintBars.draw(sketch, new Xy(5, -3));
    double line = low;
    for (String words : words()) {
      sketch.label(Layers.TEXT, new Xy(5, line), words, Sketch.LARGE, TextAnchor.START);
      line -= 6;
    }
    TitleLines.stamp(checked, sketch, Layers.STAMP, new Xy(5, stock.getMaxY() + 6));
    Extent extent = new Extent(-3, line, stock.getMaxX() + 3, stock.getMaxY() + 12);
    return sketch.drawing(title(), extent);
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(title() + ". FRONT face up.");
    words.add("Beside each hole, across / up: readings from the filled corner, in " + unit() + ".");
    words.addAll(sheet.asBought());
    words.addAll(PrintBars.WORDS);
    words.add(TitleLines.BOULDERING);
    return words;
  }

  private String unit() {
    return tape.tape().unit().plural();
  }

  private String title() {
    return checked.layout().wall().name() + ": " + sheet.words() + ", template";
  }

  private Envelope stock() {
    return new Envelope(0, sheet.first().stock().width(), 0, sheet.first().stock().height());
  }

  /** Words stand on the right of holes, or on the left where a page ends. */
  private void drawHoles(Sketch sketch, List<MachinedHole> holes, double end) {
    for (MachinedHole hole : holes) {
      Xy centre = new Xy(hole.spot().x(), hole.spot().y());
      sketch.hole(centre, hole.bore().diameter());
      String words = tape.words(centre);
      double beside = hole.bore().diameter() / 2 + 1;
      boolean fits = hole.spot().x() + beside + TextSize.width(words, Sketch.SMALL) < end;
      sketch.label(
          Layers.TEXT,
          centre.plus(fits ? beside : -beside, beside),
          words,
          Sketch.SMALL,
          fits ? TextAnchor.START : TextAnchor.END);
    }
  }

  /** What a hole takes with its words, mm on the sheet. */
  private Envelope box(MachinedHole hole) {
    double half = hole.bore().diameter() / 2 + 1;
    Xy centre = new Xy(hole.spot().x(), hole.spot().y());
    double words = TextSize.width(tape.words(centre), Sketch.SMALL);
    return new Envelope(
        hole.spot().x() - half - words,
        hole.spot().x() + half + words,
        hole.spot().y() - half,
        hole.spot().y() + half + 3);
  }

  /** The map, then a page for each tile. */
  Print tiled(TemplatePaper paper) {
    double around = sheet.diameter() / 2 + AROUND;
    double length = Math.max(stock().getWidth(), stock().getHeight());
    TileSize size =
        TileSize.of(paper, length).stream()
            .min(Comparator.comparingInt(each -> each.plan(around).of(sheet.centres()).size()))
            .orElseThrow();
    List<TilePlan.Tile> tiles = size.plan(around).of(sheet.centres());
    List<Envelope> taken = sheet.first().inserts().stream().map(this::box).toList();
    AlignmentCrosses crosses = AlignmentCrosses.on(tiles, taken, stock(), tape);
    List<Print.Page> pages = new ArrayList<>();
    pages.add(new TileMap(checked, sheet, tiles).page(TileSize.ofMap(paper)));
    for (TilePlan.Tile tile : tiles) {
      String count = "page " + (pages.size() + 1) + " of " + (tiles.size() + 1);
      pages.add(page(size, tile, crosses, count));
    }
    return new Print(title(), pages);
  }

  private Print.Page page(
      TileSize size, TilePlan.Tile tile, AlignmentCrosses crosses, String count) {
    Sketch part = new Sketch(1);
    sheet.draw(part);
    Envelope window = tile.window();
    drawHoles(
        part,
        sheet.first().inserts().stream().filter(hole -> isWhole(hole, window)).toList(),
        window.getMaxX());
    crosses.draw(part, window, new FreeSpot(sheet.edges()));
    Extent extent =
        new Extent(window.getMinX(), window.getMinY(), window.getMaxX(), window.getMaxY());
    Xy at = new Xy(TileSize.MARGIN, TileSize.MARGIN + TileSize.STRIP);
    return new Print.Page(
        "Tile " + tile.name(),
        size.width(),
        size.height(),
        List.of(
            new Print.Placed(part.drawing(tile.name(), extent), at),
            new Print.Placed(frame(size, tile, count), new Xy(0, 0))));
  }

  private static boolean isWhole(MachinedHole hole, Envelope window) {
    double half = hole.bore().diameter() / 2;
    return window.contains(
        new Envelope(
            hole.spot().x() - half,
            hole.spot().x() + half,
            hole.spot().y() - half,
            hole.spot().y() + half));
  }

  private Drawing frame(TileSize size, TilePlan.Tile tile, String count) {
    Sketch sketch = new Sketch(1);
    double left = TileSize.MARGIN;
    double low = TileSize.MARGIN + TileSize.STRIP;
    double right = size.width() - TileSize.MARGIN;
    double high = size.height() - TileSize.MARGIN;
    sketch.outline(
        Layers.TILES,
        List.of(new Xy(left, low), new Xy(right, low), new Xy(right, high), new Xy(left, high)));
    PrintBars.bar(sketch, new Xy(left, BAR), PrintBars.METRIC, "100 mm if printed true");
    List<String> lines =
        List.of(
            title() + ". Tile " + tile.name() + ", " + count + ". FRONT face up.",
            "Lay each cross on a mark at its readings, across / up from the filled corner, in "
                + unit()
                + ".",
            "Where tiles lap, their crosses lie on each other; measured marks go before taped"
                + " edges.",
            TitleLines.BOULDERING);
    for (int line = 0; line < lines.size(); line++) {
      Xy at = new Xy(left, LINES[line]);
      sketch.label(Layers.TEXT, at, lines.get(line), Sketch.SMALL, TextAnchor.START);
    }
    TitleLines.stamp(checked, sketch, Layers.STAMP, new Xy(right - TitleLines.stampWidth(), BAR));
    return sketch.drawing(tile.name(), new Extent(0, 0, size.width(), size.height()));
  }
}
