package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Print;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.MachinedHole;

/** How tiles lie on a sheet, and how to print and lay them. */
final class TileMap {
  private static final double STEP = 5;

  private final CheckedLayout checked;
  private final TemplateSheet sheet;
  private final List<TilePlan.Tile> tiles;

  /**
   * The map of one sheet.
   *
   * @param checked the wall
   * @param sheet what the tiles show
   * @param tiles in the order of their pages
   */
  TileMap(CheckedLayout checked, TemplateSheet sheet, List<TilePlan.Tile> tiles) {
    this.checked = checked;
    this.sheet = sheet;
    this.tiles = tiles;
  }

  /** The page, on a paper. */
  Print.Page page(TileSize size) {
    Drawing map = map();
    double width = map.extent().width() / map.scale();
    double height = map.extent().height() / map.scale();
    Xy at = new Xy((size.width() - width) / 2, size.height() - 2 * TileSize.MARGIN - height - 8);
    return new Print.Page(
        "Map of the tiles",
        size.width(),
        size.height(),
        List.of(
            new Print.Placed(words(size, at.y() - 4), new Xy(0, 0)), new Print.Placed(map, at)));
  }

  private Drawing map() {
    double width = sheet.first().stock().width();
    double height = sheet.first().stock().height();
    Sketch sketch = new Sketch(Scale.fitting(width, height));
    sheet.draw(sketch);
    List<Envelope> taken = new ArrayList<>();
    for (MachinedHole hole : sheet.first().inserts()) {
      sketch.circle(
          Layers.HOLES, new Xy(hole.spot().x(), hole.spot().y()), hole.bore().diameter() / 2);
      taken.add(hole(hole));
    }
    Envelope all = new Envelope(0, width, 0, height);
    for (TilePlan.Tile tile : tiles) {
      Envelope window = tile.window();
      all.expandToInclude(window);
      sketch.outline(Layers.TILES, corners(window));
      name(sketch, tile, around(tile, taken));
    }
    all.expandBy(sketch.paper(1));
    return sketch.drawing(
        "Tiles", new Extent(all.getMinX(), all.getMinY(), all.getMaxX(), all.getMaxY()));
  }

  /** What a tile's name keeps clear of: holes, edges of pieces and those of other tiles. */
  private List<Envelope> around(TilePlan.Tile tile, List<Envelope> holes) {
    List<Envelope> taken = new ArrayList<>(holes);
    taken.addAll(sheet.edges());
    for (TilePlan.Tile other : tiles) {
      if (!other.equals(tile)) {
        FreeSpot.addEdges(Shapes.rectangle(other.window()), taken);
      }
    }
    return taken;
  }

  private static Envelope hole(MachinedHole hole) {
    Envelope box = new Envelope(hole.spot().x(), hole.spot().x(), hole.spot().y(), hole.spot().y());
    box.expandBy(hole.bore().diameter() / 2);
    return box;
  }

  /** Level where no other tile lies, else anywhere on the tile, else upright. */
  private static void name(Sketch sketch, TilePlan.Tile tile, List<Envelope> taken) {
    double width = sketch.paper(TextSize.width(tile.name(), Sketch.SMALL) + 0.2);
    double height = sketch.paper(Sketch.SMALL + 0.2);
    Envelope own = new Envelope(tile.window());
    own.expandBy(-TilePlan.LAP - 1);
    FreeSpot spots = new FreeSpot(taken);
    Polygon window = Shapes.rectangle(tile.window());
    Optional<Xy> level =
        spots.in(Shapes.rectangle(own), width, height).or(() -> spots.in(window, width, height));
    Optional<Xy> upright = level.isPresent() ? level : spots.in(window, height, width);
    Xy at = upright.orElse(new Xy(own.centre().x, own.centre().y));
    if (level.isEmpty() && upright.isPresent()) {
      sketch.labelUp(Layers.TEXT, at, tile.name(), Sketch.SMALL, TextAnchor.MIDDLE);
    } else {
      sketch.label(Layers.TEXT, at, tile.name(), Sketch.SMALL, TextAnchor.MIDDLE);
    }
  }

  private static List<Xy> corners(Envelope box) {
    return List.of(
        new Xy(box.getMinX(), box.getMinY()),
        new Xy(box.getMaxX(), box.getMinY()),
        new Xy(box.getMaxX(), box.getMaxY()),
        new Xy(box.getMinX(), box.getMaxY()));
  }

  private Drawing words(TileSize size, double under) {
    Sketch sketch = new Sketch(1);
    Xy at = new Xy(2 * TileSize.MARGIN, under);
    PrintBars.draw(sketch, at);
    at = at.plus(0, -PrintBars.ROOM - 2);
    for (String line : lines()) {
      sketch.label(Layers.TEXT, at, line, Sketch.SMALL, TextAnchor.START);
      at = at.plus(0, -STEP);
    }
    Xy head = new Xy(2 * TileSize.MARGIN, size.height() - 2 * TileSize.MARGIN);
    sketch.label(Layers.TEXT, head, title(), Sketch.LARGE, TextAnchor.START);
    TitleLines.stamp(
        checked,
        sketch,
        Layers.STAMP,
        head.plus(size.width() - 4 * TileSize.MARGIN - TitleLines.stampWidth(), 0));
    return sketch.drawing("Words", new Extent(0, 0, size.width(), size.height()));
  }

  private String title() {
    return "Templates for " + sheet.words();
  }

  private List<String> lines() {
    String unit = checked.layout().wall().tape().unit().plural();
    List<String> lines = new ArrayList<>();
    lines.add(checked.layout().wall().name() + ". " + tiles.size() + " tiles. FRONT face up.");
    lines.addAll(PrintBars.WORDS);
    lines.add(
        "Mark the crosses on the sheet: across / up from the filled corner, in " + unit + ".");
    lines.addAll(sheet.asBought());
    lines.add("Lay each tile with its crosses on the marks and tape it down.");
    lines.add("Where tiles lap, their crosses lie on each other; paper that creeps shows there.");
    lines.add("Prick every centre through the paper, then take the paper off and drill.");
    lines.add(TitleLines.BOULDERING);
    return lines;
  }
}
