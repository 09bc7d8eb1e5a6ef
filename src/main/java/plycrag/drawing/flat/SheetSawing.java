package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Xy;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Shapes;
import plycrag.layout.sheets.AlikeSheets;
import plycrag.layout.sheets.LaidPiece;
import plycrag.layout.sheets.LaidSheet;
import plycrag.layout.sheets.OffcutPart;
import plycrag.solve.nest.SheetCutting.SawCut;
import plycrag.units.Tape;
import plycrag.wall.machine.SheetCuttingRules.CutWith;

/**
 * How a sheet comes apart: its pieces with mark and size, the saw cuts numbered in their order, the
 * offcuts with their sizes, the cover strips and gussets cut from these; to fit a page.
 */
public final class SheetSawing {
  /** From a cut to its number on paper, mm. */
  private static final double ASIDE = Sketch.LARGE * 0.5 + 1.6;

  /** How far a kerf is drawn beyond what it separates on paper, mm. */
  private static final double BEYOND = 2;

  /** Places tried along a cut for its number, on either side. */
  private static final int PARTS = 20;

  /** Cuts told on one line below the picture. */
  private static final int A_LINE = 4;

  private final CheckedLayout checked;
  private final LaidSheet sheet;
  private final Tape tape;
  private final Sketch sketch;
  private final List<OffcutPart> parts;
  private final List<Envelope> cutLines = new ArrayList<>();
  private final ClearWords words;

  private SheetSawing(CheckedLayout checked, LaidSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
    this.parts = checked.layout().offcuts().of(sheet);
    this.tape = checked.layout().wall().tape();
    this.sketch = new Sketch(Scale.fitting(sheet.stock().width(), sheet.stock().height()));
    this.words = new ClearWords(sketch);
  }

  /** The picture of a sheet. */
  public static Drawing of(CheckedLayout checked, LaidSheet sheet) {
    return new SheetSawing(checked, sheet).drawing();
  }

  /** Whether a sheet is cut at all, and not like an earlier one. */
  public static boolean isNeeded(CheckedLayout checked, LaidSheet sheet) {
    boolean first = new AlikeSheets(checked.layout().sheets()).earlier(sheet).isEmpty();
    boolean isCut = sheet.pieces().size() > 1 || !sheet.stock().cutting().cuts().isEmpty();
    return !checked.layout().offcuts().of(sheet).isEmpty() || (first && isCut);
  }

  private Drawing drawing() {
    sketch.path(Layers.CONTEXT, SheetOutline.whole(sheet.stock()));
    Extent view = new Extent(0, 0, sheet.stock().width(), sheet.stock().height());
    words.keepOffEdges(
        Shapes.rectangle(new Envelope(view.left(), view.right(), view.low(), view.high())));
    for (LaidPiece laid : sheet.pieces()) {
      SheetOutline.of(laid).drawCut(sketch, Layers.OUTLINE);
      words.keepOffEdges(laid.placement().of(laid.piece().blank()));
    }
    parts.forEach(this::draw);
    Datum.outside(sketch, new Xy(0, 0), 1);
    List<SawCut> cuts = cuts();
    cuts.forEach(this::draw);
    nameParts();
    for (int order = 1; order <= cuts.size(); order++) {
      number(cuts.get(order - 1), String.valueOf(order));
    }
    sheet.pieces().forEach(this::label);
    sheet.stock().cutting().offcuts().forEach(this::label);
    String title = "Cutting sheet " + String.join(", ", marks());
    return new ViewPage(view, false).finish(checked, sketch, title, notes(cuts));
  }

  /** A sheet whose offcuts are used is told apart from those that are else like it. */
  private List<String> marks() {
    if (!parts.isEmpty()) {
      return List.of(sheet.mark());
    }
    return new AlikeSheets(checked.layout().sheets()).marks(sheet);
  }

  private List<SawCut> cuts() {
    boolean saw = checked.layout().wall().nesting().cutWith() == CutWith.SAW;
    return saw ? sheet.stock().cutting().cuts() : List.of();
  }

  private void draw(OffcutPart part) {
    sketch.outline(Layers.PARTS, corners(part.place()));
    words.keepOff(part.place());
  }

  private static List<Xy> corners(Envelope box) {
    return List.of(
        new Xy(box.getMinX(), box.getMinY()),
        new Xy(box.getMaxX(), box.getMinY()),
        new Xy(box.getMaxX(), box.getMaxY()),
        new Xy(box.getMinX(), box.getMaxY()));
  }

  private void draw(SawCut cut) {
    double beyond = sketch.paper(BEYOND);
    Xy from = on(cut, cut.from() - beyond);
    Xy to = on(cut, cut.to() + beyond);
    sketch.line(Layers.BEHIND, from, to);
    Envelope line = new Envelope(from.x(), to.x(), from.y(), to.y());
    words.keepOff(line);
    cutLines.add(line);
  }

  private static Xy on(SawCut cut, double along) {
    return cut.upright() ? new Xy(cut.at(), along) : new Xy(along, cut.at());
  }

  /** Beside the cut, as near to where it begins as there is room, or where a leader reaches. */
  private void number(SawCut cut, String order) {
    List<Xy> places = new ArrayList<>();
    for (int part = 1; part < PARTS; part++) {
      Xy along = on(cut, cut.from() + cut.length() * part / PARTS);
      for (double away : new double[] {sketch.paper(ASIDE), -sketch.paper(ASIDE)}) {
        places.add(cut.upright() ? along.plus(-away, 0) : along.plus(0, away));
      }
    }
    if (!words.at(places, order, Sketch.LARGE)) {
      words.beside(on(cut, cut.from() + cut.length() / 2), order, Sketch.LARGE);
    }
  }

  private void label(LaidPiece laid) {
    String mark = laid.piece().mark();
    Polygon area = laid.placement().of(laid.piece().blank());
    if (!words.in(area, mark + ": " + size(laid.box())) && !words.in(area, mark)) {
      words.beside(middle(laid.box()), mark, Sketch.SMALL);
    }
  }

  /** In the middle of each part, along it; beside those too small to hold their marks. */
  private void nameParts() {
    parts.stream().filter(this::holdsMark).forEach(part -> words.along(part.place(), part.mark()));
    parts.stream()
        .filter(part -> !holdsMark(part))
        .forEach(part -> words.beside(middle(part.place()), part.mark(), Sketch.SMALL));
  }

  /** Whether a part has room for its mark; a cut beside it is drawn on beyond its ends. */
  private boolean holdsMark(OffcutPart part) {
    Envelope along = words.lying(part.place(), part.mark());
    return words.holds(part.place(), part.mark()) && cutLines.stream().noneMatch(along::intersects);
  }

  private static Xy middle(Envelope box) {
    return new Xy(box.centre().x, box.centre().y);
  }

  private void label(Envelope offcut) {
    words.in(Shapes.rectangle(offcut), "offcut " + size(offcut));
  }

  private String size(Envelope box) {
    return tape.reading(box.getWidth()) + " x " + tape.text(box.getHeight());
  }

  private List<String> notes(List<SawCut> cuts) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "The sheet is "
            + size(new Envelope(0, sheet.stock().width(), 0, sheet.stock().height()))
            + (sheet.stock().kind().isAtHand() ? ", at hand." : "."));
    if (!cuts.isEmpty()) {
      notes.add(
          "Cut in this order, each right across what is then one part; the kerf of "
              + tape.size(checked.layout().wall().nesting().gap())
              + " lies beyond the reading.");
    }
    for (int from = 0; from < cuts.size(); from += A_LINE) {
      notes.add(words(cuts, from, Math.min(from + A_LINE, cuts.size())));
    }
    if (sheet.pieces().stream().anyMatch(laid -> !laid.piece().blank().isRectangle())) {
      notes.add(
          "What is no rectangle is cut to its outline afterwards, by the drawing of the sheet.");
    }
    List<Envelope> offcuts = sheet.stock().cutting().offcuts();
    for (int from = 0; from < offcuts.size(); from += A_LINE) {
      List<Envelope> some = offcuts.subList(from, Math.min(from + A_LINE, offcuts.size()));
      notes.add("Offcuts: " + String.join("; ", some.stream().map(this::size).toList()) + ".");
    }
    for (OffcutPart part : parts) {
      boolean isGusset = checked.layout().offcuts().gusset(part.mark()).isPresent();
      String what = isGusset ? "Gusset " : "Cover strip ";
      notes.add(what + part.mark() + ": " + size(part.place()) + ", from an offcut.");
    }
    return notes;
  }

  private String words(List<SawCut> cuts, int from, int to) {
    List<String> told = new ArrayList<>();
    for (int at = from; at < to; at++) {
      SawCut cut = cuts.get(at);
      String where = cut.upright() ? " up at " : " across at ";
      told.add((at + 1) + where + tape.text(cut.at()));
    }
    return String.join("; ", told) + ".";
  }
}
