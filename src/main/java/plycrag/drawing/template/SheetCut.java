package plycrag.drawing.template;

import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.drawing.flat.EngravedStrokes;
import plycrag.drawing.flat.SheetOutline;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.OffcutPart;
import plycrag.layout.sheets.WorkedFace;
import plycrag.wall.Wall;
import plycrag.wall.machine.SheetCuttingRules.CutWith;

/**
 * A stock sheet for a router shop, true size: what is cut and bored, each once and each on the layer
 * of its operation, and what is engraved by its strokes. The sheet's own edge, pieces that a saw
 * cuts or that are cut after the sheet was turned over, and words lie on layers that say that they
 * are not for cutting.
 */
public final class SheetCut {
  private final CheckedLayout checked;
  private final WorkedFace face;
  private final OperationLayers layers;
  private final Sketch sketch = new Sketch(1);

  private SheetCut(CheckedLayout checked, WorkedFace face, OperationLayers layers) {
    this.checked = checked;
    this.face = face;
    this.layers = layers;
  }

  /** The drawing of a face, its lower left corner at 0, 0, its layers named as usual. */
  public static Drawing of(CheckedLayout checked, WorkedFace face) {
    return of(checked, face, OperationLayers.USUAL);
  }

  /** The same with layers of other names. */
  public static Drawing of(CheckedLayout checked, WorkedFace face, OperationLayers layers) {
    return new SheetCut(checked, face, layers).drawing();
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
    return sketch.drawing(
        checked.layout().wall().name() + ": sheet " + sheet.mark(),
        new Extent(0, 0, sheet.stock().width(), sheet.stock().height()));
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
