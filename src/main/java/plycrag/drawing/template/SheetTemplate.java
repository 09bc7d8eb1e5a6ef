package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import plycrag.drawing.flat.RecessWords;
import plycrag.drawing.flat.SheetOutline;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TitleLines;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.MachinedHole.Kind;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.standing.SheetDatum;

/**
 * A stock sheet true size, to print or to lay under: outline, holes with their marks, the datum
 * corner, and a bar to measure the print by.
 */
public final class SheetTemplate {
  private static final double BAR = 100;
  private static final double AROUND_HOLE = 30;

  private final CheckedLayout checked;
  private final WorkedFace face;
  private final LaidSheet sheet;
  private final Sketch sketch = new Sketch(1);

  private SheetTemplate(CheckedLayout checked, WorkedFace face) {
    this.checked = checked;
    this.face = face;
    this.sheet = face.sheet();
  }

  /** The template of a sheet with one of its faces up; its page is the sheet. */
  public static Drawing of(CheckedLayout checked, WorkedFace face) {
    return new SheetTemplate(checked, face).drawing();
  }

  private Drawing drawing() {
    sketch.path(Layers.CONTEXT, SheetOutline.whole(sheet.stock()));
    for (LaidPiece laid : sheet.pieces()) {
      SheetOutline outline = SheetOutline.of(laid);
      outline.drawCut(sketch, Layers.OUTLINE);
      outline.drawFront(sketch);
    }
    for (MachinedHole hole : sheet.holes()) {
      sketch.hole(hole);
      if (hole.kind() == Kind.INSERT) {
        Xy centre = new Xy(hole.spot().x(), hole.spot().y());
        double beside = hole.bore().diameter() / 2;
        sketch.label(
            Layers.TEXT,
            centre.plus(beside + 2, beside + 1),
            hole.mark(),
            Sketch.SMALL,
            TextAnchor.START);
      }
    }
    EngravedStrokes.draw(checked, face.marks(), OperationLayers.USUAL, sketch);
    Datum.inside(sketch, SheetDatum.of(checked.layout(), sheet));
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
    lines.add(sheet.faceUp().word().toUpperCase(Locale.ROOT) + " face up.");
    for (LaidPiece laid : sheet.pieces()) {
      lines.add("Piece " + laid.piece().mark() + " of facet " + laid.facet() + turned(laid) + ".");
    }
    if (!sheet.holes(Kind.RECESS).isEmpty()) {
      RecessWords.of(checked.layout().wall()).ifPresent(lines::add);
    }
    lines.add("True size if the bar measures 100 mm.");
    lines.add(TitleLines.support(checked) + ".");
    lines.add(TitleLines.BOULDERING);
    double width =
        lines.stream().mapToDouble(line -> TextSize.width(line, Sketch.LARGE)).max().orElse(BAR);
    double height = 6.0 * lines.size() + 10;
    Xy at = middle(width + 4, height + 4).plus(-width / 2, height / 2);
    for (String line : lines) {
      at = at.plus(0, -6);
      sketch.label(
          line.equals(TitleLines.STAMP) ? Layers.STAMP : Layers.TEXT,
          at,
          line,
          Sketch.LARGE,
          TextAnchor.START);
    }
    drawBar(at.plus(0, -8));
    if (sheet.pieces().size() > 1) {
      drawMarks(new Envelope(at.x(), at.x() + width, at.y() - 10, at.y() + height));
    }
  }

  /** Each piece's mark on it, clear of the words. */
  private void drawMarks(Envelope words) {
    List<Envelope> taken = taken();
    taken.add(words);
    FreeSpot spots = new FreeSpot(taken);
    for (LaidPiece laid : sheet.pieces()) {
      String mark = laid.piece().mark();
      double width = TextSize.width(mark, Sketch.LARGE) + 4;
      spots
          .in(laid.placement().of(laid.piece().outline()), width, Sketch.LARGE + 4)
          .ifPresent(at -> sketch.label(Layers.TEXT, at, mark, Sketch.LARGE, TextAnchor.MIDDLE));
    }
  }

  private static String turned(LaidPiece laid) {
    int degrees = laid.placement().turn().degrees();
    return degrees == 0 ? "" : ", turned by " + degrees + "°";
  }

  /** The middle of a free place in the first piece that has one. */
  private Xy middle(double width, double height) {
    FreeSpot spots = new FreeSpot(taken());
    Coordinate first = outlines().get(0).getEnvelopeInternal().centre();
    return outlines().stream()
        .flatMap(piece -> spots.in(piece, width, height).stream())
        .findFirst()
        .orElse(new Xy(first.x, first.y));
  }

  private List<Polygon> outlines() {
    return sheet.pieces().stream()
        .map(laid -> laid.placement().of(laid.piece().outline()))
        .toList();
  }

  private List<Envelope> taken() {
    List<Envelope> taken = new ArrayList<>();
    for (MachinedHole hole : sheet.holes()) {
      Envelope box = new Envelope(new Coordinate(hole.spot().x(), hole.spot().y()));
      box.expandBy(hole.bore().diameter());
      box.expandToInclude(box.getMaxX() + AROUND_HOLE, box.getMaxY());
      taken.add(box);
    }
    for (LaidPiece laid : sheet.pieces()) {
      if (!laid.piece().outline().isRectangle()) {
        FreeSpot.addEdges(laid.placement().of(laid.piece().outline()), taken);
      }
      SheetOutline.of(laid).openings().forEach(opening -> taken.add(around(opening)));
    }
    face.marks().forEach(mark -> taken.add(mark.box()));
    return taken;
  }

  private static Envelope around(List<Xy> corners) {
    Envelope box = new Envelope();
    corners.forEach(corner -> box.expandToInclude(corner.x(), corner.y()));
    return box;
  }

  private void drawBar(Xy left) {
    Xy right = left.plus(BAR, 0);
    sketch.line(Layers.PARTS, left, right);
    sketch.line(Layers.PARTS, left.plus(0, -2), left.plus(0, 2));
    sketch.line(Layers.PARTS, right.plus(0, -2), right.plus(0, 2));
  }
}
