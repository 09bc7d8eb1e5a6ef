package plycrag.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.layout.LaidSheet;
import plycrag.layout.MachinedHole;
import plycrag.params.InsertParameters.Pattern;
import plycrag.params.SheetParameters.Grain;
import plycrag.units.Tape;

/** A stock sheet as it lies, with the readings at which to mark its holes; to fit a page. */
public final class SheetView {
  private final CheckedLayout checked;
  private final LaidSheet sheet;
  private final Sketch sketch;

  private SheetView(CheckedLayout checked, LaidSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
    List<Double> columns = readings(MachinedHole::x);
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
    SheetOutline outline = SheetOutline.of(sheet);
    outline.stock().ifPresent(stock -> sketch.path(Layers.CONTEXT, stock));
    sketch.outline(Layers.OUTLINE, outline.piece());
    outline.openings().forEach(opening -> sketch.outline(Layers.OUTLINE, opening));
    outline.front().forEach(edge -> sketch.path(Layers.DIMENSIONS, edge));
    for (MachinedHole hole : sheet.holes()) {
      sketch.hole(new Xy(hole.x(), hole.y()), hole.diameter());
    }
    Datum.outside(sketch, new Xy(0, 0), 1);
    drawDimensions();
    Tape tape = checked.layout().wall().tape();
    List<String> notes = new ArrayList<>();
    notes.add(
        "FRONT face up. Piece "
            + sheet.piece().mark()
            + " of facet "
            + sheet.facet()
            + ", "
            + size(sheet.piece().blank().getEnvelopeInternal(), tape)
            + ".");
    notes.add(
        "Read from the filled corner, the sheet's lower left, in " + tape.unit().plural() + ".");
    notes.add("Face grain runs " + (grainRunsAcross() ? "across" : "up") + " the sheet.");
    if (!sheet.piece().isSquare()) {
      notes.add("Cut square, then bevel by the saw list; the thin line is the front edge then.");
    }
    Extent view = new Extent(0, 0, sheet.stock().width(), sheet.stock().height());
    return new ViewPage(view, false).finish(checked, sketch, "Sheet " + sheet.mark(), notes);
  }

  /** The lines of holes; scattered holes stand in none, their places are in the marking out. */
  private List<Double> readings(Function<MachinedHole, Double> place) {
    boolean scattered = checked.layout().wall().inserts().pattern() == Pattern.SCATTER;
    return scattered ? List.of() : sheet.holes().stream().map(place).toList();
  }

  private boolean grainRunsAcross() {
    boolean longSideAcross = sheet.stock().width() > sheet.stock().height();
    boolean along = checked.layout().wall().sheet().grain() == Grain.ALONG;
    return along == longSideAcross;
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
    List<Double> across = new ArrayList<>(readings(MachinedHole::x));
    List<Double> up = new ArrayList<>(readings(MachinedHole::y));
    Envelope blank = sheet.piece().blank().getEnvelopeInternal();
    across.add(blank.getWidth());
    up.add(blank.getHeight());
    if (!sheet.piece().blank().isRectangle()) {
      for (Coordinate corner : Corners.of(sheet.piece().blank())) {
        addReading(corner.x - sheet.stock().placement().originU(), across);
        addReading(corner.y - sheet.stock().placement().originV(), up);
      }
    }
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    dimensions.across(0, 0, Readings.of(across, tape, x -> x));
    dimensions.up(0, 0, Readings.of(up, tape, y -> y));
  }
}
