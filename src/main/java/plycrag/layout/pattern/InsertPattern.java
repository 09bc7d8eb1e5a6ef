package plycrag.layout.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import plycrag.geometry.Tolerance;
import plycrag.layout.skin.Axis;
import plycrag.solve.scatter.Fade;
import plycrag.units.Tape;
import plycrag.wall.Pattern;
import plycrag.wall.Pattern.Symmetry;
import plycrag.wall.Wall;

/** The columns and rows that a pattern asks for, on the marking grid, and where it has inserts. */
public final class InsertPattern {
  private final Pattern pattern;
  private final Envelope box;
  private final Tape tape;
  private final boolean isMirrored;

  /** The area of a stock sheet, mm². */
  private final double sheet;

  private InsertPattern(PatternArea area) {
    Wall wall = area.wall();
    this.pattern = area.pattern();
    this.sheet = wall.sheet().length() * wall.sheet().width();
    this.box = area.box();
    this.tape = wall.tape();
    this.isMirrored = wall.isMirrored();
  }

  /** The lines and the places on them where a hole is asked for. */
  public static PatternLines of(PatternArea area) {
    return new InsertPattern(area).set().where(hole -> area.asksFor(hole.centre()));
  }

  private PatternLines set() {
    PatternLines lines = lines();
    return isMirrored ? mirrored(lines) : lines;
  }

  /** The same lines from the right. */
  private PatternLines mirrored(PatternLines lines) {
    List<Double> columns = new ArrayList<>();
    lines.columns().forEach(column -> columns.add(0, image(column)));
    List<PatternLines.Cell> cells = new ArrayList<>();
    lines
        .cells()
        .forEach(
            cell ->
                cells.add(new PatternLines.Cell(columns.size() - 1 - cell.column(), cell.row())));
    cells.sort(
        Comparator.comparingInt(PatternLines.Cell::row)
            .thenComparingInt(PatternLines.Cell::column));
    return new PatternLines(columns, lines.rows(), cells);
  }

  /** On the marking grid, between the setbacks where the column is. */
  private double image(double column) {
    double place = box.getMinX() + box.getMaxX() - column;
    double snapped = tape.snap(place);
    double setback = pattern.fit().setback();
    boolean isWithin = Tolerance.atLeast(column, box.getMinX() + setback);
    return isWithin && Tolerance.isMore(snapped, box.getMaxX() - setback)
        ? tape.snapDown(place)
        : snapped;
  }

  private PatternLines lines() {
    return switch (pattern.kind()) {
      case LINES -> at(given(Axis.ACROSS), row -> given(Axis.UP));
      case GRID -> at(rows(), row -> columns(0));
      case DENSITY -> dense();
      case OFFSET -> at(rows(), row -> columns(row % 2 == 0 ? 0 : pattern.pitch().across() / 2));
      case SCATTER, FILE, NONE -> throw new IllegalStateException("a pattern without lines");
    };
  }

  private List<Double> given(Axis lines) {
    return lines == Axis.UP
        ? pattern.lines().columns().stream().map(place -> tape.snap(box.getMinX() + place)).toList()
        : pattern.lines().rows().stream().map(place -> tape.snap(box.getMinY() + place)).toList();
  }

  private interface Columns {
    List<Double> inRow(int row);
  }

  private static PatternLines at(List<Double> rows, Columns columns) {
    TreeSet<Double> lines = new TreeSet<>();
    for (int row = 0; row < rows.size(); row++) {
      lines.addAll(columns.inRow(row));
    }
    List<Double> numbered = new ArrayList<>(lines);
    List<PatternLines.Cell> cells = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (double u : columns.inRow(row)) {
        cells.add(new PatternLines.Cell(Collections.binarySearch(numbered, u), row));
      }
    }
    return new PatternLines(numbered, rows, cells);
  }

  private List<Double> rows() {
    double first = box.getMinY() + pattern.fit().setback();
    double last = box.getMaxY() - pattern.fit().setback();
    return pattern.fades() ? fading(first, last) : steps(first, pattern.pitch().up(), last);
  }

  /** Rows from the setback up, each as far above the one below as the pitch is there. */
  private List<Double> fading(double first, double last) {
    Fade pitch =
        new Fade(box.getMinY(), pattern.pitch().up(), box.getMaxY(), pattern.pitch().topUp());
    List<Double> places = new ArrayList<>();
    double place = tape.snap(first);
    while (Tolerance.atMost(place, last)) {
      places.add(place);
      place = tape.snap(place + pitch.at(place));
    }
    return places;
  }

  /** Columns from the left setback, or about the middle of the width. */
  private List<Double> columns(double shift) {
    double pitch = pattern.pitch().across();
    double last = box.getMaxX() - pattern.fit().setback();
    if (pattern.fit().symmetry() == Symmetry.NONE) {
      return steps(box.getMinX() + pattern.fit().setback() + shift, pitch, last);
    }
    double middle = box.centre().getX();
    double half = Math.max(0, box.getWidth() / 2 - pattern.fit().setback());
    double first = middle - Tolerance.wholeDown(half / pitch) * pitch;
    boolean isOut = Tolerance.isLess(first - shift, box.getMinX() + pattern.fit().setback());
    List<Double> left =
        steps(isOut ? first + shift : first - shift, pitch, middle - Tolerance.RECKONING);
    List<Double> places = new ArrayList<>(left);
    if (shift == 0) {
      places.add(tape.snap(middle));
    }
    left.forEach(place -> places.add(tape.snap(box.getMinX() + box.getMaxX() - place)));
    Collections.sort(places);
    return places;
  }

  /**
   * Columns and rows evenly from setback to setback, as far apart across as up if that can be: so
   * many columns, and then so many rows as come nearest to the inserts asked for. None where the
   * setbacks leave no room.
   */
  private PatternLines dense() {
    double wanted = pattern.density().on(box.getArea(), sheet);
    double pitch = Math.sqrt(box.getArea() / wanted);
    double across = box.getWidth() - 2 * pattern.fit().setback();
    if (Math.min(across, box.getHeight() - 2 * pattern.fit().setback()) < 0) {
      return at(List.of(), row -> List.of());
    }
    int columns = (int) Math.max(1, Math.round(across / pitch) + 1);
    int rows = (int) Math.max(1, Math.round(wanted / columns));
    return at(upward(rows), row -> even(columns));
  }

  private List<Double> even(int count) {
    MarkingGrid marking = new MarkingGrid(tape, box.getMinX() + box.getMaxX());
    double span = box.getWidth() - 2 * pattern.fit().setback();
    return parts(count)
        .map(part -> marking.snap(box.getMinX() + pattern.fit().setback() + part * span))
        .distinct()
        .boxed()
        .toList();
  }

  /** Rows so far apart that as many inserts stand around each place as the density is there. */
  private List<Double> upward(int count) {
    MarkingGrid marking = new MarkingGrid(tape, box.getMinY() + box.getMaxY());
    double span = box.getHeight() - 2 * pattern.fit().setback();
    return parts(count)
        .map(part -> pattern.density().height(part))
        .map(height -> marking.snap(box.getMinY() + pattern.fit().setback() + height * span))
        .distinct()
        .boxed()
        .toList();
  }

  /** So many places evenly from 0 to 1; a single one is in the middle. */
  private static DoubleStream parts(int count) {
    return IntStream.range(0, count)
        .mapToDouble(at -> count == 1 ? 0.5 : (double) at / (count - 1));
  }

  private List<Double> steps(double first, double pitch, double last) {
    List<Double> places = new ArrayList<>();
    for (int step = 0; Tolerance.atMost(tape.snap(first + step * pitch), last); step++) {
      places.add(tape.snap(first + step * pitch));
    }
    return places;
  }
}
