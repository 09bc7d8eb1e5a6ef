package plycrag.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plycrag.check.CheckedLayout;
import plycrag.document.Drawing;
import plycrag.document.Extent;
import plycrag.document.Fill;
import plycrag.document.TextAnchor;
import plycrag.document.Xy;
import plycrag.drawing.pen.Datum;
import plycrag.drawing.pen.LabelSpread;
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.units.Count;
import plycrag.units.Tape;

/**
 * A drilling guide from an offcut of the sheet: a strip with holes at the rows' pitch, cleats that
 * stop it at an edge of the sheet, seen from above and from the side, and how to use it.
 */
final class StripJig {
  /** About half of the strip's breadth, mm. */
  private static final double HALF = 45;

  private static final double BEYOND = 60;
  private static final double CLEAT = 45;
  private static final double NOTCH = 8;

  private final CheckedLayout checked;
  private final JigPlan plan;
  private final Tape tape;
  private final double breadth;
  private final double first;
  private final double length;
  private final Sketch sketch;

  private StripJig(CheckedLayout checked, JigPlan plan) {
    this.checked = checked;
    this.plan = plan;
    this.tape = checked.layout().wall().tape();
    this.breadth = 2 * tape.snapDown(HALF);
    List<Double> stops = plan.stops();
    this.first = Math.max(stops.get(stops.size() - 1), BEYOND) + CLEAT;
    this.length = first + (plan.count() - 1) * plan.pitch() + BEYOND;
    this.sketch = new Sketch(Scale.fitting(length, breadth));
  }

  /**
   * The jig of a plan.
   *
   * @param words which sheets it is for
   */
  static Drawing of(CheckedLayout checked, JigPlan plan, String words) {
    return new StripJig(checked, plan).drawing(words);
  }

  private Drawing drawing(String words) {
    drawStrip();
    drawSide();
    drawDimensions();
    List<String> notes = new ArrayList<>();
    notes.add(
        "For " + words + ". Figures in " + tape.unit().plural() + ", from the filled corner.");
    notes.addAll(steps());
    Extent view = new Extent(0, sideLow(), length, breadth);
    return new ViewPage(view, false)
        .finish(checked, sketch, "Strip jig, pitch " + tape.text(plan.pitch()), notes);
  }

  private List<String> steps() {
    String hole = tape.size(plan.diameter());
    List<String> steps = new ArrayList<>();
    steps.add(
        "1. Rip a straight strip "
            + tape.text(breadth)
            + " wide and "
            + tape.text(length)
            + " long from an offcut. Strike its middle.");
    steps.add(
        "2. Drill "
            + Count.of(plan.count(), "hole")
            + " of "
            + hole
            + " on the middle, square, in a drill stand. Notch both ends at the middle.");
    steps.add("3. " + cleats());
    steps.add("4. Drill one trial hole in scrap, and fit a real insert in it, before any sheet.");
    steps.add("5. Strike every row on the sheet (marking out). Set the notches to the line.");
    steps.add(
        "6. Push the cleat against the sheet's "
            + (plan.fromRight() ? "right edge, the strip turned end for end" : "left edge")
            + ", clamp; put a backing board below.");
    steps.add(
        "7. Drill through with the "
            + hole
            + " bit until it is in the board; where no hole is listed, drill none.");
    steps.add("8. A row that goes on: pin the strip's first hole to the last one drilled.");
    return steps;
  }

  private String cleats() {
    List<Double> stops = plan.stops();
    String places =
        stops.stream().map(stop -> tape.text(stop)).collect(Collectors.joining(" and "));
    return stops.size() == 1
        ? "Screw the cleat below it, its right edge " + places + " left of the first hole."
        : "Screw a cleat below it for each start: right edges "
            + places
            + " left of the first hole. Fit the one that is the row's first reading.";
  }

  /** From above: holes, the middle, notches, cleats below. */
  private void drawStrip() {
    sketch.area(Layers.TINT, box(0, 0, length, breadth), Fill.TIMBER);
    sketch.outline(Layers.OUTLINE, box(0, 0, length, breadth));
    double middle = breadth / 2;
    sketch.line(Layers.CENTRE, new Xy(NOTCH, middle), new Xy(length - NOTCH, middle));
    notch(0, 1);
    notch(length, -1);
    for (int hole = 0; hole < plan.count(); hole++) {
      sketch.hole(new Xy(first + hole * plan.pitch(), middle), plan.diameter());
    }
    for (double stop : plan.stops()) {
      double right = first - stop;
      sketch.path(
          Layers.BEHIND,
          List.of(
              new Xy(right, 0),
              new Xy(right, breadth),
              new Xy(right - CLEAT, breadth),
              new Xy(right - CLEAT, 0)));
    }
  }

  private void notch(double x, int inward) {
    double middle = breadth / 2;
    sketch.path(
        Layers.PARTS,
        List.of(
            new Xy(x, middle - NOTCH / 2),
            new Xy(x + inward * NOTCH, middle),
            new Xy(x, middle + NOTCH / 2)));
  }

  private double thick() {
    return checked.layout().wall().sheet().thickness();
  }

  private double sideTop() {
    return -sketch.paper(34);
  }

  private double sideLow() {
    return sideTop() - 3 * thick() - sketch.paper(2);
  }

  /** From the side: the strip on the sheet on the backing board, the cleat at the sheet's edge. */
  private void drawSide() {
    double top = sideTop();
    double edge = first - plan.stops().get(0);
    part(edge - CLEAT, edge, top - thick());
    part(0, length, top);
    name(top, 1, "strip jig");
    part(edge, length, top - thick());
    name(top - thick(), 0, "sheet, front up");
    part(edge, length, top - 2 * thick());
    name(top - 2 * thick(), -1, "backing board");
    for (int hole = 0; hole < plan.count(); hole++) {
      double x = first + hole * plan.pitch();
      sketch.line(Layers.CENTRE, new Xy(x, top + sketch.paper(3)), new Xy(x, top - 2.5 * thick()));
    }
  }

  private void part(double left, double right, double top) {
    List<Xy> corners = box(left, top - thick(), right, top);
    sketch.area(Layers.TINT, corners, Fill.TIMBER);
    for (int at = 0; at < corners.size(); at++) {
      sketch.line(Layers.PARTS, corners.get(at), corners.get((at + 1) % corners.size()));
    }
  }

  /** Beside a part; names are further apart than the parts are. */
  private void name(double top, int up, String words) {
    Xy foot = new Xy(length, top - thick() / 2);
    Xy beside = foot.plus(sketch.paper(4), up * sketch.paper(LabelSpread.STEP));
    sketch.line(Layers.DIMENSIONS, foot, beside);
    Xy at = beside.plus(sketch.paper(0.8), 0);
    sketch.label(Layers.TEXT, at, words, Sketch.SMALL, TextAnchor.START);
  }

  private static List<Xy> box(double left, double low, double right, double high) {
    return List.of(new Xy(left, low), new Xy(right, low), new Xy(right, high), new Xy(left, high));
  }

  private void drawDimensions() {
    Datum.outside(sketch, new Xy(0, 0), 1);
    RunningDimensions dimensions = new RunningDimensions(sketch, 1);
    List<Double> across = new ArrayList<>();
    for (int hole = 0; hole < plan.count(); hole++) {
      across.add(first + hole * plan.pitch());
    }
    plan.stops().forEach(stop -> across.add(first - stop));
    across.add(length);
    dimensions.across(0, 0, Readings.of(across, tape, x -> x));
    dimensions.up(0, 0, Readings.of(List.of(breadth / 2, breadth), tape, y -> y));
  }
}
