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
import plycrag.drawing.pen.Layers;
import plycrag.drawing.pen.Readings;
import plycrag.drawing.pen.RunningDimensions;
import plycrag.drawing.pen.Scale;
import plycrag.drawing.pen.Sketch;
import plycrag.drawing.pen.ViewPage;
import plycrag.units.Tape;

/**
 * The rods of a sheet with what is marked on them, one below the other, and how they are used. They
 * are drawn to a scale and marked by their readings.
 */
final class StoryRods {
  /** How far a rod goes on beyond its last mark, mm. */
  private static final double BEYOND = 60;

  private static final double BREADTH = 5;
  private static final double ROOM = RunningDimensions.ROOM + 12;

  /** Readings in one line of words. */
  private static final int IN_LINE = 14;

  private final CheckedLayout checked;
  private final RodPlan plan;
  private final TemplateSheet sheet;
  private final Tape tape;
  private final double length;
  private final Sketch sketch;

  private StoryRods(CheckedLayout checked, RodPlan plan, TemplateSheet sheet) {
    this.checked = checked;
    this.plan = plan;
    this.sheet = sheet;
    this.tape = checked.layout().wall().tape();
    this.length =
        BEYOND
            + all().stream()
                .flatMap(List::stream)
                .mapToDouble(reading -> reading)
                .max()
                .orElseThrow();
    this.sketch = new Sketch(Scale.fitting(length, length / 2));
  }

  /** The rods of a plan for sheets that are drilled alike. */
  static Drawing of(CheckedLayout checked, RodPlan plan, TemplateSheet sheet) {
    return new StoryRods(checked, plan, sheet).drawing();
  }

  private List<List<Double>> all() {
    List<List<Double>> all = new ArrayList<>(List.of(plan.lines()));
    plan.rods().forEach(rod -> all.add(rod.readings()));
    return all;
  }

  private Drawing drawing() {
    double low = 0;
    List<List<Double>> rods = all();
    for (int rod = 0; rod < rods.size(); rod++) {
      low = -rod * sketch.paper(ROOM);
      drawRod("R" + rod, rods.get(rod), low);
    }
    Extent view = new Extent(0, low, length, sketch.paper(BREADTH + 6));
    return new ViewPage(view, false).finish(checked, sketch, "Story rods", notes());
  }

  private void drawRod(String name, List<Double> readings, double low) {
    double high = low + sketch.paper(BREADTH);
    double end = readings.get(readings.size() - 1) + BEYOND;
    List<Xy> corners =
        List.of(new Xy(0, low), new Xy(end, low), new Xy(end, high), new Xy(0, high));
    sketch.area(Layers.TINT, corners, Fill.TIMBER);
    sketch.outline(Layers.OUTLINE, corners);
    for (double reading : readings) {
      sketch.line(Layers.PARTS, new Xy(reading, low), new Xy(reading, high));
    }
    Xy above = new Xy(sketch.paper(2), high + sketch.paper(2));
    sketch.label(Layers.TEXT, above, name, Sketch.SMALL, TextAnchor.START);
    Datum.outside(sketch, new Xy(0, low), 1);
    new RunningDimensions(sketch, 1).across(0, low, Readings.of(readings, tape, x -> x));
  }

  private List<String> notes() {
    String lines = plan.byRows() ? "rows" : "columns";
    String edge = plan.byRows() ? sheet.datum().levelEdge() : sheet.datum().sideEdge();
    String end = plan.byRows() ? sheet.datum().sideEdge() : sheet.datum().levelEdge();
    List<String> notes = new ArrayList<>();
    notes.add(
        "For "
            + sheet.words()
            + ", front up. Figures in "
            + tape.unit().plural()
            + ", from each rod's filled corner.");
    notes.add("1. Square a mark across a straight lath at every reading; write its name on it.");
    notes.add(
        "2. R0 at both ends of the sheet, its end at the "
            + edge
            + ": mark the "
            + lines
            + ", and strike a line through each pair of marks.");
    notes.add("3. Along each line its rod, its end at the " + end + ": mark the holes.");
    for (int rod = 0; rod < plan.rods().size(); rod++) {
      notes.addAll(served("R" + (rod + 1) + " for the " + lines, plan.rods().get(rod).lines()));
    }
    notes.add(
        "4. Where no hole is listed (marking out), mark none. Measure the last of each line.");
    notes.addAll(sheet.asBought());
    return notes;
  }

  private List<String> served(String begin, List<Double> lines) {
    List<String> words = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += IN_LINE) {
      String part =
          lines.subList(from, Math.min(lines.size(), from + IN_LINE)).stream()
              .map(tape::reading)
              .collect(Collectors.joining(", "));
      words.add("    " + (from == 0 ? begin + ": " : "") + part);
    }
    return words;
  }
}
