package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FreeSpot;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.OperationLayers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.TapeCorners;
import plycrag.drawing.pen.ViewPage;
import plycrag.layout.sheets.EngravedMark;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.MachinedHole;
import plycrag.layout.sheets.WorkedFace;
import plycrag.layout.standing.SheetDatum;
import plycrag.units.Tape;
import plycrag.wall.Sheet.Grain;

/** A stock sheet as it lies, with the readings at which to mark its holes; to fit a page. */
public final class SheetView {
  private final CheckedLayout checked;
  private final LaidSheet sheet;
  private final SheetDatum datum;
  private final Sketch sketch;

  private SheetView(CheckedLayout checked, LaidSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
    this.datum = SheetDatum.of(checked.layout(), sheet);
    List<Double> columns = readings(hole -> hole.spot().x());
    this.sketch =
        new Sketch(
            Scale.legible(
                sheet.stock().width(), sheet.stock().height(), Readings.leastStep(columns)));
  }

  /** The view of a sheet. */
  public static Drawing of(CheckedLayout checked, LaidSheet sheet) {
    return new SheetView(checked, sheet).drawing();
  }

  private Drawing drawing() {
    sketch.path(Layers.CONTEXT, SheetOutline.whole(sheet.stock()));
    for (LaidPiece laid : sheet.pieces()) {
      SheetOutline outline = SheetOutline.of(laid);
      outline.drawCut(sketch, Layers.OUTLINE);
      outline.drawFront(sketch);
    }
    holes().forEach(sketch::hole);
    EngravedStrokes.draw(checked, engraved(), OperationLayers.USUAL, sketch);
    nameParts();
    Datum.outside(sketch, datum);
    drawDimensions();
    Extent view = new Extent(0, 0, sheet.stock().width(), sheet.stock().height());
    return new ViewPage(view, datum.fromRight())
        .finish(checked, sketch, "Sheet " + sheet.mark(), notes());
  }

  /** Each piece's mark on it, where a clear place is. */
  private void nameParts() {
    FreeSpot spots = new FreeSpot(taken());
    for (LaidPiece laid : sheet.pieces()) {
      String mark = laid.piece().mark();
      double width = sketch.paper(TextSize.width(mark, Sketch.LARGE) + 1);
      spots
          .in(laid.placement().of(laid.piece().outline()), width, sketch.paper(Sketch.LARGE + 1))
          .ifPresent(at -> sketch.label(Layers.TEXT, at, mark, Sketch.LARGE, TextAnchor.MIDDLE));
    }
  }

  private List<Envelope> taken() {
    List<Envelope> taken = new ArrayList<>();
    for (MachinedHole hole : holes()) {
      Envelope box = new Envelope(new Coordinate(hole.spot().x(), hole.spot().y()));
      box.expandBy(Math.max(hole.bore().diameter() / 2, sketch.paper(1)));
      taken.add(box);
    }
    for (LaidPiece laid : sheet.pieces()) {
      FreeSpot.addEdges(laid.placement().of(laid.piece().outline()), taken);
      FreeSpot.addEdges(laid.placement().of(laid.piece().blank()), taken);
    }
    engraved().forEach(mark -> taken.add(mark.box()));
    return taken;
  }

  private List<EngravedMark> engraved() {
    return worked().flatMap(face -> face.marks().stream()).toList();
  }

  /** What is made with this face up; recesses are, where it is the back. */
  private List<MachinedHole> holes() {
    return worked().flatMap(face -> face.sheet().holes().stream()).toList();
  }

  private Stream<WorkedFace> worked() {
    return checked.layout().faces().stream()
        .filter(face -> face.sheet().mark().equals(sheet.mark()))
        .filter(face -> face.sheet().faceUp() == sheet.faceUp());
  }

  private List<String> notes() {
    Tape tape = checked.layout().wall().tape();
    List<String> notes = new ArrayList<>();
    notes.add(sheet.faceUp().word().toUpperCase(Locale.ROOT) + " face up.");
    sheet.pieces().forEach(laid -> notes.add(words(laid, tape)));
    notes.add(
        "Read from the filled corner, the sheet's "
            + datum.corner()
            + ", in "
            + tape.unit().plural()
            + ".");
    if (datum.isOdd()) {
      notes.add("As bought: read from edges that meet a seam.");
    }
    if (!sheet.inserts().isEmpty()) {
      RecessWords.of(checked.layout().wall()).ifPresent(notes::add);
    }
    notes.add("Face grain runs " + (grainRunsAcross() ? "across" : "up") + " the sheet.");
    if (sheet.pieces().stream().anyMatch(laid -> !laid.piece().isSquare())) {
      notes.add("Cut square, then bevel by the saw list; the thin line is the front edge then.");
    }
    return notes;
  }

  private static String words(LaidPiece laid, Tape tape) {
    int degrees = laid.placement().turn().degrees();
    return "Piece "
        + laid.piece().mark()
        + " of facet "
        + laid.facet()
        + ", "
        + size(laid.piece().blank().getEnvelopeInternal(), tape)
        + (degrees == 0 ? "." : ", turned by " + degrees + "° from how it stands on the wall.");
  }

  /** The lines of holes; scattered holes stand in none, their places are in the marking out. */
  private List<Double> readings(Function<MachinedHole, Double> place) {
    boolean inLines = checked.layout().wall().hasLinesOnly();
    return !inLines ? List.of() : sheet.inserts().stream().map(place).toList();
  }

  private boolean grainRunsAcross() {
    boolean along = checked.layout().wall().sheet().laying().grain() == Grain.ALONG;
    return along != sheet.stock().upright();
  }

  private static String size(Envelope box, Tape tape) {
    return tape.reading(box.getWidth()) + " x " + tape.text(box.getHeight());
  }

  private static void addReading(double place, List<Double> readings) {
    if (place > 0) {
      readings.add(place);
    }
  }

  private void drawDimensions() {
    Tape tape = checked.layout().wall().tape();
    List<Double> across = new ArrayList<>(readings(hole -> datum.across(hole.spot().x())));
    List<Double> up = new ArrayList<>(readings(hole -> datum.up(hole.spot().y())));
    for (LaidPiece laid : sheet.pieces()) {
      for (Coordinate corner : TapeCorners.of(laid.piece().blank())) {
        addReading(datum.across(laid.placement().of(corner).x), across);
        addReading(datum.up(laid.placement().of(corner).y), up);
      }
    }
    double from = datum.fromRight() ? datum.width() : 0;
    RunningDimensions dimensions = new RunningDimensions(sketch, datum.fromRight() ? -1 : 1);
    dimensions.across(from, 0, Readings.of(across, tape, datum::across));
    dimensions.up(datum.fromTop() ? datum.height() : 0, from, Readings.of(up, tape, datum::up));
  }
}
