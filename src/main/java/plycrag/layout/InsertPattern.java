package plycrag.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import plycrag.geometry.Shapes;
import plycrag.params.InsertParameters;
import plycrag.params.InsertParameters.Pattern;
import plycrag.units.Tape;
import plycrag.wall.Facet;

/** The columns and rows that a pattern asks for, on the marking grid, and where it has inserts. */
final class InsertPattern {
  private static final double TOLERANCE = 1e-6;

  private final InsertParameters inserts;
  private final Facet facet;
  private final Tape tape;

  private InsertPattern(InsertParameters inserts, Facet facet, Tape tape) {
    this.inserts = inserts;
    this.facet = facet;
    this.tape = tape;
  }

  /** The lines and the places on them where an insert is asked for. */
  static PatternLines of(InsertParameters inserts, Facet facet, Tape tape) {
    PatternLines lines = new InsertPattern(inserts, facet, tape).lines();
    return facet.isRectangle() && facet.cutouts().isEmpty()
        ? lines
        : lines.where(insert -> isOn(facet, insert, inserts));
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
    return steps(inserts.setback(), inserts.pitchUp(), facet.length() - inserts.setback());
  }

  private List<Double> columns(double shift) {
    return steps(
        inserts.setback() + shift, inserts.pitchAcross(), facet.width() - inserts.setback());
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
