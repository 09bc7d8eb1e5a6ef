package plycrag.drawing;

import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.layout.LaidSheet;
import plycrag.layout.MachinedHole;

/**
 * A stock sheet for a router shop, true size: the pieces' outlines and the holes, each once, each
 * on the layer of its operation, and not a word among them unless the sheet must not be made.
 */
public final class SheetCut {
  private SheetCut() {}

  /** The drawing of a sheet, its lower left corner at 0, 0. */
  public static Drawing of(CheckedLayout checked, LaidSheet sheet) {
    Sketch sketch = new Sketch(1);
    sheet.pieces().forEach(laid -> SheetOutline.of(laid).drawCut(sketch, Layers.CUT));
    for (MachinedHole hole : sheet.holes()) {
      sketch.circle(Layers.of(hole), new Xy(hole.x(), hole.y()), hole.diameter() / 2);
    }
    TitleLines.stamp(checked, sketch, Layers.STAMP, new Xy(20, 20));
    return sketch.drawing(
        checked.layout().wall().name() + ": sheet " + sheet.mark(),
        new Extent(0, 0, sheet.stock().width(), sheet.stock().height()));
  }
}
