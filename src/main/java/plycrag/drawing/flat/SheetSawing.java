package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.TextAnchor;
import plycrag.document.TextSize;
import plycrag.document.Xy;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.FreeSpot;
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
  private static final double AROUND = 0.8;

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
  private final List<Envelope> taken = new ArrayList<>();

  private SheetSawing(CheckedLayout checked, LaidSheet sheet) {
    this.checked = checked;
    this.sheet = sheet;
    this.parts = checked.layout().offcuts().of(sheet);
    this.tape = checked.layout().wall().tape();
    this.sketch = new Sketch(Scale.fitting(sheet.stock().width(), sheet.stock().height()));
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
    for (LaidPiece laid : sheet.pieces()) {
      SheetOutline.of(laid).drawCut(sketch, Layers.OUTLINE);
      FreeSpot.addEdges(laid.placement().of(laid.piece().blank()), taken);
    }
    parts.forEach(this::draw);
    Datum.outside(sketch, new Xy(0, 0), 1);
    List<SawCut> cuts = cuts();
    cuts.forEach(this::draw);
    for (int order = 1; order <= cuts.size(); order++) {
      number(cuts.get(order - 1), String.valueOf(order));
    }
    sheet.pieces().forEach(this::label);
    parts.forEach(this::label);
    sheet.stock().cutting().offcuts().forEach(this::label);
    Extent view = new Extent(0, 0, sheet.stock().width(), sheet.stock().height());
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
    Polygon area = Shapes.rectangle(part.place());
    sketch.outline(Layers.PARTS, corners(part.place()));
    FreeSpot.addEdges(area, taken);
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
    Envelope box = new Envelope(from.x(), to.x(), from.y(), to.y());
    taken.add(box);
  }

  private static Xy on(SawCut cut, double along) {
    return cut.upright() ? new Xy(cut.at(), along) : new Xy(along, cut.at());
  }

  /** Beside the cut, as near to where it begins as there is room. */
  private void number(SawCut cut, String order) {
    FreeSpot spots = new FreeSpot(taken);
    double aside = sketch.paper(Sketch.LARGE * 0.5 + 2 * AROUND);
    for (int part = 1; part < PARTS; part++) {
      Xy along = on(cut, cut.from() + cut.length() * part / PARTS);
      for (double away : new double[] {aside, -aside}) {
        Xy at = cut.upright() ? along.plus(-away, 0) : along.plus(0, away);
        Envelope box = room(at, order);
        if (spots.isFree(box)) {
          sketch.label(Layers.TEXT, at, order, Sketch.LARGE, TextAnchor.MIDDLE);
          taken.add(box);
          return;
        }
      }
    }
  }

  private Envelope room(Xy at, String text) {
    double width = sketch.paper(TextSize.width(text, Sketch.LARGE) / 2 + AROUND);
    double high = sketch.paper(Sketch.LARGE / 2 + AROUND);
    return new Envelope(at.x() - width, at.x() + width, at.y() - high, at.y() + high);
  }

  private void label(LaidPiece laid) {
    String mark = laid.piece().mark();
    Polygon area = laid.placement().of(laid.piece().blank());
    if (!write(area, mark + ": " + size(laid.box()))) {
      write(area, mark);
    }
  }

  /** In the middle of a part, along it; all are wide enough for a line of words. */
  private void label(OffcutPart part) {
    Envelope box = part.place();
    Xy middle = new Xy(box.centre().x, box.centre().y);
    if (box.getWidth() >= box.getHeight()) {
      sketch.label(Layers.TEXT, middle, part.mark(), Sketch.SMALL, TextAnchor.MIDDLE);
    } else {
      sketch.labelUp(Layers.TEXT, middle, part.mark(), Sketch.SMALL, TextAnchor.MIDDLE);
    }
    taken.add(box);
  }

  private void label(Envelope offcut) {
    write(Shapes.rectangle(offcut), "offcut " + size(offcut));
  }

  /** Writes level, or upright, if there is room. */
  private boolean write(Polygon area, String text) {
    FreeSpot spots = new FreeSpot(taken);
    double length = sketch.paper(TextSize.width(text, Sketch.SMALL) + 2 * AROUND);
    double height = sketch.paper(Sketch.SMALL + 2 * AROUND);
    Optional<Xy> level = spots.in(area, length, height);
    Optional<Xy> upright = level.isPresent() ? level : spots.in(area, height, length);
    level.ifPresent(at -> sketch.label(Layers.TEXT, at, text, Sketch.SMALL, TextAnchor.MIDDLE));
    if (level.isEmpty()) {
      upright.ifPresent(
          at -> sketch.labelUp(Layers.TEXT, at, text, Sketch.SMALL, TextAnchor.MIDDLE));
    }
    double across = level.isPresent() ? length : height;
    double up = level.isPresent() ? height : length;
    upright.ifPresent(
        at ->
            taken.add(
                new Envelope(
                    at.x() - across / 2, at.x() + across / 2, at.y() - up / 2, at.y() + up / 2)));
    return upright.isPresent();
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
    List<String> words = new ArrayList<>();
    for (int at = from; at < to; at++) {
      SawCut cut = cuts.get(at);
      String where = cut.upright() ? " up at " : " across at ";
      words.add((at + 1) + where + tape.text(cut.at()));
    }
    return String.join("; ", words) + ".";
  }
}
