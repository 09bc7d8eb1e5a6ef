package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.flat.EngravedStrokes;
import plycrag.drawing.flat.SheetOutline;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.geometry.Shapes;
import plycrag.layout.Revision;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.OffcutPart;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.Wall;
import plycrag.wall.machine.SheetCuttingRules.CutWith;

/**
 * A stock sheet for a router shop, true size: what is cut and bored, each once and each on the
 * layer of its operation, and what is engraved by its strokes. The sheet's own edge, pieces that a
 * saw cuts or that are cut after the sheet was turned over, and words lie on layers that say that
 * they are not for cutting.
 */
public final class SheetCut {
  /** From line to line of its words, mm. */
  private static final double LINE = 5;

  private final CheckedLayout checked;
  private final WorkedFace face;
  private final OperationLayers layers;
  private final List<String> words;
  private final Sketch sketch = new Sketch(1);

  private SheetCut(
      CheckedLayout checked, WorkedFace face, OperationLayers layers, String revision) {
    this.checked = checked;
    this.face = face;
    this.layers = layers;
    this.words = SheetCutWords.of(checked, face, revision);
  }

  /** The drawing of a face, its lower left corner at 0, 0, its layers named as usual. */
  public static Drawing of(CheckedLayout checked, WorkedFace face) {
    return of(checked, face, OperationLayers.USUAL, Revision.of(checked.layout()));
  }

  /**
   * The same with layers of other names.
   *
   * @param revision of the layout, told once for all sheets
   */
  public static Drawing of(
      CheckedLayout checked, WorkedFace face, OperationLayers layers, String revision) {
    return new SheetCut(checked, face, layers, revision).drawing();
  }

  private Drawing drawing() {
    LaidSheet sheet = face.sheet();
    if (!layers.isPlain()) {
      sketch.outline(Layers.SHEET, SheetOutline.whole(sheet.stock()).subList(0, 4));
    }
    drawEdges(sheet);
    for (MachinedHole hole : sheet.holes()) {
      sketch.circle(
          layers.of(hole, checked.layout().wall()),
          new Xy(hole.spot().x(), hole.spot().y()),
          hole.bore().diameter() / 2);
    }
    EngravedStrokes.draw(checked, face.marks(), layers, sketch);
    TitleLines.stamp(checked, sketch, Layers.NOT_CUT, new Xy(20, 20));
    if (!layers.isPlain()) {
      drawWords();
    }
    return sketch
        .drawing(
            checked.layout().wall().name() + ": sheet " + sheet.mark(),
            new Extent(0, 0, sheet.stock().width(), sheet.stock().height()))
        .remarked(words);
  }

  private void drawWords() {
    double width =
        words.stream().mapToDouble(line -> TextSize.width(line, Sketch.SMALL)).max().orElseThrow();
    double height = LINE * words.size();
    Xy at = middle(width + LINE, height + LINE).plus(-width / 2, (height - LINE) / 2);
    for (String line : words) {
      sketch.label(Layers.NOT_CUT, at, line, Sketch.SMALL, TextAnchor.START);
      at = at.plus(0, -LINE);
    }
  }

  private Xy middle(double width, double height) {
    Polygon whole = Shapes.rectangle(face.sheet().area());
    return new FreeSpot(taken())
        .in(whole, width, height)
        .orElseGet(() -> new Xy(whole.getCentroid().getX(), whole.getCentroid().getY()));
  }

  private List<Envelope> taken() {
    List<Envelope> taken = new ArrayList<>();
    for (MachinedHole hole : face.sheet().holes()) {
      Envelope box = new Envelope(new Coordinate(hole.spot().x(), hole.spot().y()));
      box.expandBy(hole.bore().diameter() / 2);
      taken.add(box);
    }
    for (LaidPiece laid : face.sheet().pieces()) {
      FreeSpot.addEdges(laid.kept(), taken);
      Shapes.openings(laid.kept()).forEach(one -> taken.add(one.getEnvelopeInternal()));
    }
    checked.layout().offcuts().of(face.sheet()).forEach(part -> taken.add(part.place()));
    face.marks().forEach(mark -> taken.add(mark.box()));
    taken.add(new Envelope(20, 20 + TitleLines.stampWidth(), 15, 25));
    return taken;
  }

  private void drawEdges(LaidSheet sheet) {
    CutLines lines = new CutLines(sketch, layers, sheet);
    if (isCut()) {
      sheet.pieces().forEach(laid -> lines.cut(laid.kept()));
      for (OffcutPart part : checked.layout().offcuts().of(sheet)) {
        lines.cut(Shapes.rectangle(part.place()));
      }
    } else if (!layers.isPlain()) {
      sheet.pieces().forEach(laid -> lines.show(laid.kept()));
    }
  }

  /** Whether a router cuts pieces out of it now. */
  private boolean isCut() {
    Wall wall = checked.layout().wall();
    boolean router =
        wall.nesting().cutWith() == CutWith.ROUTER || wall.machine().work().routing().cuts();
    return router && face.isLast();
  }
}
