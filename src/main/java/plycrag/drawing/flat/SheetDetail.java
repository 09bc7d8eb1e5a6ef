package plycrag.drawing.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.geometry.Direction;
import plycrag.layout.facet.FacetLayout;
import plycrag.layout.frame.Member;
import plycrag.layout.pattern.Screw;
import plycrag.layout.skin.Axis;
import plycrag.layout.skin.Seam;
import plycrag.units.Tape;
import plycrag.wall.Inserts;
import plycrag.wall.Recess;
import plycrag.wall.Wall;

/** An insert through the sheet and, where there is one, a seam over its backing, cut through. */
public final class SheetDetail {
  /** How much is shown on either side of what is cut, mm. */
  private static final double SIDE = 70;

  /** From the insert to the seam, mm. */
  private static final double STEP = 230;

  /** How much of the timber is shown, mm. */
  private static final double TIMBER = 50;

  /** A flange of sheet steel (common practice, no source), mm. */
  private static final double FLANGE = 1.5;

  /** Rows nearer to each other are one, set to the marking grid of two pieces, mm. */
  private static final double SAME_ROW = 5;

  private static final int SCALE = 2;

  private final CheckedLayout checked;
  private final Wall wall;
  private final double thickness;
  private final Sketch sketch = new Sketch(SCALE);

  private SheetDetail(CheckedLayout checked) {
    this.checked = checked;
    this.wall = checked.layout().wall();
    this.thickness = wall.sheet().thickness();
  }

  /** A seam with its facet. */
  private record Place(FacetLayout facet, Seam seam) {}

  /** The details of a wall. */
  public static Drawing of(CheckedLayout checked) {
    return new SheetDetail(checked).drawing();
  }

  private Drawing drawing() {
    List<String> notes = new ArrayList<>();
    notes.add("CUT THROUGH; the climbing face is below, the back above.");
    drawInsert(notes);
    Optional<Place> seam = firstSeam();
    seam.ifPresent(place -> drawSeam(place, notes));
    double right = seam.isPresent() ? STEP + SIDE : SIDE;
    Extent view = new Extent(-SIDE, 0, right, thickness + TIMBER);
    return new ViewPage(view, false).finish(checked, sketch, title(seam), notes);
  }

  private static String title(Optional<Place> seam) {
    return seam.isPresent() ? "Insert and seam" : "Insert";
  }

  private Optional<Place> firstSeam() {
    return checked.layout().facets().stream()
        .flatMap(facet -> facet.seams().stream().map(seam -> new Place(facet, seam)))
        .findFirst();
  }

  private void drawInsert(List<String> notes) {
    Inserts insert = wall.inserts();
    Tape tape = wall.tape();
    double hole = insert.body().hole() / 2;
    double seat = insert.under(thickness);
    insert
        .body()
        .recess()
        .ifPresentOrElse(recess -> drawRecessed(recess, hole), () -> drawFlat(hole));
    double flange = insert.body().flange() / 2;
    box(-flange, seat, flange, seat + FLANGE, Fill.INK);
    double end = seat - insert.body().barrel();
    box(-hole, end, -hole + FLANGE, seat, Fill.INK);
    box(hole - FLANGE, end, hole, seat, Fill.INK);
    sketch.line(Layers.CENTRE, new Xy(0, -10), new Xy(0, thickness + 15));
    name(new Xy(flange, seat + FLANGE), "flange " + tape.size(insert.body().flange()));
    notes.add(
        "Insert: hole "
            + tape.size(insert.body().hole())
            + " through "
            + tape.size(thickness)
            + "; it goes in from the back. Barrel "
            + tape.size(insert.body().barrel())
            + ", shorter than the sheet.");
    RecessWords.of(wall).ifPresent(notes::add);
  }

  private void drawFlat(double hole) {
    sheet(-SIDE, -hole);
    sheet(hole, SIDE);
  }

  /** The sheet on either side of a hole, lower where the recess is. */
  private void drawRecessed(Recess recess, double hole) {
    double wide = recess.diameter() / 2;
    double seat = thickness - recess.depth();
    for (int side : List.of(-1, 1)) {
      body(
          List.of(
              new Xy(side * SIDE, 0),
              new Xy(side * hole, 0),
              new Xy(side * hole, seat),
              new Xy(side * wide, seat),
              new Xy(side * wide, thickness),
              new Xy(side * SIDE, thickness)),
          Fill.TIMBER);
      plies(side * SIDE, side * hole, 0, seat);
      plies(side * SIDE, side * wide, seat, thickness);
    }
  }

  private void drawSeam(Place place, List<String> notes) {
    Seam seam = place.seam();
    Direction across = seam.axis() == Axis.UP ? Direction.LEVEL : Direction.UP;
    double shift = STEP - seam.middle();
    sheet(STEP - SIDE, STEP - seam.gap() / 2);
    sheet(STEP + seam.gap() / 2, STEP + SIDE);
    TreeSet<Double> drawn = new TreeSet<>();
    for (Member member : place.facet().members()) {
      Direction.Span span = across.span(member.footprint());
      boolean backs =
          member.direction().isParallel(across.across())
              && span.low() > seam.middle() - SIDE
              && span.high() < seam.middle() + SIDE
              && reaches(member, seam, across.across());
      if (backs && drawn.subSet(span.low() - SAME_ROW, span.low() + SAME_ROW).isEmpty()) {
        drawn.add(span.low());
        timber(span.low() + shift, span.high() + shift, member.mark());
      }
    }
    for (double screw : screws(place, across)) {
      double x = screw + shift;
      double end = Math.min(wall.screws().length(), thickness + TIMBER - 5);
      sketch.line(Layers.SCREWS, new Xy(x, 0), new Xy(x, end));
      sketch.line(Layers.SCREWS, new Xy(x - 4, 0), new Xy(x + 4, 0));
    }
    notes.add(
        "Seam of facet "
            + place.facet().facet().name()
            + ": a gap of "
            + wall.tape().size(seam.gap())
            + ", a row of screws on either side, timber behind both.");
  }

  /** Whether it lies behind the middle of the seam's length. */
  private static boolean reaches(Member member, Seam seam, Direction along) {
    Direction.Span span = along.span(member.footprint());
    double middle = (seam.low() + seam.high()) / 2;
    return seam.axis() == Axis.ACROSS || (span.low() <= middle && middle <= span.high());
  }

  /** Where rows of screws run along the seam. */
  private Set<Double> screws(Place place, Direction across) {
    TreeSet<Double> rows = new TreeSet<>();
    for (Screw screw : place.facet().screws()) {
      double at = across.along(screw.centre());
      boolean beside = Math.abs(at - place.seam().middle()) < wall.frame().breadth();
      if (beside && rows.subSet(at - SAME_ROW, at + SAME_ROW).isEmpty()) {
        rows.add(at);
      }
    }
    return rows;
  }

  private void sheet(double left, double right) {
    box(left, 0, right, thickness, Fill.TIMBER);
    plies(left, right, 0, thickness);
  }

  /** The lines between a sheet's five plies that lie between two heights. */
  private void plies(double left, double right, double low, double high) {
    double ply = thickness / 5;
    for (double at = ply; at < thickness - ply / 2; at += ply) {
      if (at > low && at < high) {
        sketch.line(Layers.CONTEXT, new Xy(left, at), new Xy(right, at));
      }
    }
  }

  private void timber(double left, double right, String mark) {
    double top = thickness + TIMBER;
    sketch.line(Layers.PARTS, new Xy(left, thickness), new Xy(left, top));
    sketch.line(Layers.PARTS, new Xy(right, thickness), new Xy(right, top));
    sketch.line(Layers.PARTS, new Xy(left, thickness), new Xy(right, thickness));
    Xy at = new Xy((left + right) / 2, top - sketch.paper(3));
    sketch.label(Layers.TEXT, at, mark, Sketch.SMALL, TextAnchor.MIDDLE);
  }

  private void box(double left, double low, double right, double high, Fill fill) {
    body(
        List.of(new Xy(left, low), new Xy(right, low), new Xy(right, high), new Xy(left, high)),
        fill);
  }

  private void body(List<Xy> corners, Fill fill) {
    sketch.area(Layers.TINT, corners, fill);
    sketch.closed(Layers.PARTS, corners);
  }

  private void name(Xy foot, String words) {
    Xy end = foot.plus(sketch.paper(4), sketch.paper(5));
    sketch.line(Layers.DIMENSIONS, foot, end);
    Xy at = end.plus(sketch.paper(0.8), 0);
    sketch.label(Layers.TEXT, at, words, Sketch.SMALL, TextAnchor.START);
  }
}
