package plycrag.drawing.template;

import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Layer;
import plycrag.document.Xy;
import plycrag.drawing.flat.EngravedStrokes;
import plycrag.drawing.flat.SheetOutline;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;

/**
 * A stock sheet for a router shop, true size: the pieces' outlines and the holes, each once, each
 * on the layer of its operation, what is engraved by its strokes, and not a word among them unless
 * the sheet must not be made.
 */
public final class SheetCut {
  private SheetCut() {}

  /**
   * The drawing of a face, its lower left corner at 0, 0; where the sheet is still to be turned
   * over, what is cut afterwards stands on a layer that says so.
   */
  public static Drawing of(CheckedLayout checked, WorkedFace face) {
    LaidSheet sheet = face.sheet();
    Layer edges = face.isLast() ? Layers.CUT : Layers.OUTLINE;
    Sketch sketch = new Sketch(1);
    sheet.pieces().forEach(laid -> SheetOutline.of(laid).drawCut(sketch, edges));
    double thickness = checked.layout().wall().sheet().thickness();
    for (MachinedHole hole : sheet.holes()) {
      sketch.circle(
          Layers.of(hole, thickness),
          new Xy(hole.spot().x(), hole.spot().y()),
          hole.bore().diameter() / 2);
    }
    EngravedStrokes.draw(checked, face.marks(), sketch);
    TitleLines.stamp(checked, sketch, Layers.STAMP, new Xy(20, 20));
    return sketch.drawing(
        checked.layout().wall().name() + ": sheet " + sheet.mark(),
        new Extent(0, 0, sheet.stock().width(), sheet.stock().height()));
  }
}
