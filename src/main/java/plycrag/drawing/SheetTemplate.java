package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Anchor;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.layout.LaidSheet;
import plycrag.layout.MachinedHole;

/**
 * A stock sheet true size, to print or to lay under: outline, holes with their marks, the datum
 * corner, and a bar to measure the print by.
 */
public final class SheetTemplate {
  private static final double BAR = 100;
  private static final double AROUND_HOLE = 30;

  private final CheckedLayout checked;
  private final LaidSheet sheet;
  private final Sketch sketch = new Sketch(1);

  private SheetTemplate(CheckedLayout checked, LaidSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
  }

  /** The template of a sheet; its page is the sheet. */
  public static Drawing of(CheckedLayout checked, LaidSheet sheet) {
    return new SheetTemplate(checked, sheet).drawing();
  }

  private Drawing drawing() {
    SheetOutline outline = SheetOutline.of(sheet);
    outline.stock().ifPresent(stock -> sketch.path(Layers.CONTEXT, stock));
    sketch.outline(Layers.CUT, outline.piece());
    outline.openings().forEach(opening -> sketch.outline(Layers.CUT, opening));
    outline.front().forEach(edge -> sketch.path(Layers.DIMENSIONS, edge));
    for (MachinedHole hole : sheet.holes()) {
      Xy centre = new Xy(hole.x(), hole.y());
      sketch.hole(centre, hole.diameter());
      sketch.label(
          Layers.TEXT,
          centre.plus(hole.diameter() / 2 + 2, hole.diameter() / 2 + 1),
          hole.mark(),
          Sketch.SMALL,
          Anchor.START);
    }
    Datum.inside(sketch, new Xy(0, 0));
    drawWords();
    return sketch.drawing(
        checked.layout().wall().name() + ": sheet " + sheet.mark() + ", true size",
        new Extent(0, 0, sheet.stock().width(), sheet.stock().height()));
  }

  private void drawWords() {
    List<String> lines = new ArrayList<>();
    if (!checked.isApproved()) {
      lines.add(TitleLines.STAMP);
    }
    lines.add(checked.layout().wall().name() + ", sheet " + sheet.mark());
    lines.add("FRONT face up. Piece " + sheet.piece().mark() + " of facet " + sheet.facet() + ".");
    lines.add("True size if the bar measures 100 mm.");
    lines.add(TitleLines.FRAME_ONLY + ".");
    lines.add(TitleLines.BOULDERING);
    double width =
        lines.stream().mapToDouble(line -> TextSize.width(line, Sketch.LARGE)).max().orElse(BAR);
    double height = 6.0 * lines.size() + 10;
    Envelope piece = sheet.piece().box();
    Xy middle =
        spots()
            .in(sheet.piece().outline(), width + 4, height + 4)
            .orElse(new Xy(piece.centre().x, piece.centre().y));
    Xy at = shifted(middle).plus(-width / 2, height / 2);
    for (String line : lines) {
      at = at.plus(0, -6);
      sketch.label(
          line.equals(TitleLines.STAMP) ? Layers.STAMP : Layers.TEXT,
          at,
          line,
          Sketch.LARGE,
          Anchor.START);
    }
    drawBar(at.plus(0, -8));
  }

  private Xy shifted(Xy place) {
    return place.plus(-sheet.stock().placement().originU(), -sheet.stock().placement().originV());
  }

  private FreeSpot spots() {
    List<Envelope> taken = new ArrayList<>();
    for (MachinedHole hole : sheet.holes()) {
      Envelope box = hole.place().getEnvelopeInternal();
      box.expandBy(hole.diameter());
      box.expandToInclude(box.getMaxX() + AROUND_HOLE, box.getMaxY());
      taken.add(box);
    }
    if (!sheet.piece().outline().isRectangle()) {
      FreeSpot.addEdges(sheet.piece().outline(), taken);
    }
    return new FreeSpot(taken);
  }

  private void drawBar(Xy left) {
    Xy right = left.plus(BAR, 0);
    sketch.line(Layers.PARTS, left, right);
    sketch.line(Layers.PARTS, left.plus(0, -2), left.plus(0, 2));
    sketch.line(Layers.PARTS, right.plus(0, -2), right.plus(0, 2));
  }
}
