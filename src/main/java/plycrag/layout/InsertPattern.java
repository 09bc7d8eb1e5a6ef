package plycrag.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import plycrag.geometry.Shapes;
import plycrag.layout.scatter.Fade;
import plycrag.params.InsertParameters;
import plycrag.params.InsertParameters.Pattern;
import plycrag.params.InsertParameters.Symmetry;
import plycrag.units.Tape;
import plycrag.wall.Facet;
import plycrag.wall.Wall;

/** The columns and rows that a pattern asks for, on the marking grid, and where it has inserts. */
final class InsertPattern {
  private static final double TOLERANCE = 1e-6;

  private final InsertParameters inserts;
  private final Facet facet;
  private final Tape tape;

  /** The area of a stock sheet, mm². */
  private final double sheet;

  private InsertPattern(Wall wall, Facet facet) {
    this.inserts = wall.inserts();
    this.sheet = wall.sheet().length() * wall.sheet().width();
    this.facet = facet;
    this.tape = wall.tape();
  }

  /** The lines and the places on them where an insert is asked for. */
  static PatternLines of(Wall wall, Facet facet) {
    PatternLines lines = new InsertPattern(wall, facet).lines();
    return facet.isRectangle() && facet.cutouts().isEmpty()
        ? lines
        : lines.where(insert -> isOn(facet, insert, wall.inserts()));
  }

  /**
   * On other shapes lines go on past slants and openings; grids keep the setback from those, given
   * lines are only left out where there is no face.
   */
  private static boolean isOn(Facet facet, Insert insert, InsertParameters inserts) {
    double setback = inserts.pattern() == Pattern.LINES ? 0 : inserts.setback();
    return -Shapes.distance(insert.centre(), facet.outline()) >= setback - TOLERANCE;
  }

  private PatternLines lines() {
    return switch (inserts.pattern()) {
      case LINES -> at(snapped(inserts.rows()), row -> snapped(inserts.columns()));
      case GRID -> at(rows(), row -> columns(0));
      case DENSITY -> dense();
      case SCATTER -> throw new IllegalStateException("a scatter has no lines");
      case OFFSET -> at(rows(), row -> columns(row % 2 == 0 ? 0 : inserts.pitchAcross() / 2));
    };
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
    double last = facet.length() - inserts.setback();
    return inserts.fades() ? fading(last) : steps(inserts.setback(), inserts.pitchUp(), last);
  }

  /** Rows from the setback up, each as far above the one below as the pitch is there. */
  private List<Double> fading(double last) {
    Fade pitch = new Fade(0, inserts.pitchUp(), facet.length(), inserts.topPitchUp());
    List<Double> places = new ArrayList<>();
    double place = tape.snap(inserts.setback());
    while (place <= last + TOLERANCE) {
      places.add(place);
      place = tape.snap(place + pitch.at(place));
    }
    return places;
  }

  private List<Double> columns(double shift) {
    return columns(shift, inserts.pitchAcross());
  }

  /** Columns from the left setback, or about the middle of the width. */
  private List<Double> columns(double shift, double pitch) {
    double last = facet.width() - inserts.setback();
    if (inserts.symmetry() == Symmetry.NONE) {
      return steps(inserts.setback() + shift, pitch, last);
    }
    double half = Math.max(0, facet.width() / 2 - inserts.setback());
    double first = facet.width() / 2 - Math.floor(half / pitch + TOLERANCE) * pitch;
    double from = first - shift < inserts.setback() - TOLERANCE ? first + shift : first - shift;
    List<Double> left = steps(from, pitch, facet.width() / 2 - TOLERANCE);
    List<Double> places = new ArrayList<>(left);
    if (shift == 0) {
      places.add(tape.snap(facet.width() / 2));
    }
    left.forEach(place -> places.add(tape.snap(facet.width() - place)));
    Collections.sort(places);
    return places;
  }

  /**
   * Columns and rows evenly from setback to setback, as far apart across as up if that can be: so
   * many columns, and then so many rows as come nearest to the inserts asked for.
   */
  private PatternLines dense() {
    double across = facet.width() - 2 * inserts.setback();
    double up = facet.length() - 2 * inserts.setback();
    double wanted = inserts.density().on(facet.outline().getArea(), sheet);
    double box = wanted * facet.width() * facet.length() / facet.outline().getArea();
    double pitch = Math.sqrt(facet.width() * facet.length() / box);
    int columns = (int) Math.max(1, Math.round(across / pitch) + 1);
    int rows = (int) Math.max(1, Math.round(box / columns));
    return at(even(rows, up), row -> even(columns, across));
  }

  private List<Double> even(int count, double span) {
    Marking marking = new Marking(tape, span + 2 * inserts.setback());
    List<Double> places = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      double part = count == 1 ? 0.5 : (double) at / (count - 1);
      places.add(marking.snap(inserts.setback() + part * span));
    }
    return places;
  }

  private List<Double> steps(double first, double pitch, double last) {
    List<Double> places = new ArrayList<>();
    for (int step = 0; tape.snap(first + step * pitch) <= last + TOLERANCE; step++) {
      places.add(tape.snap(first + step * pitch));
    }
    return places;
  }

  private List<Double> snapped(List<Double> places) {
    return places.stream().map(tape::snap).toList();
  }
}
