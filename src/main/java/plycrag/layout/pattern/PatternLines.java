package plycrag.layout.pattern;

import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Point;
import plycrag.geometry.Shapes;
import plycrag.layout.skin.Axis;

/**
 * Columns and rows with inserts where they cross.
 *
 * @param columns ascending, mm
 * @param rows ascending, mm
 * @param cells where an insert is asked for, row by row from the bottom
 */
public record PatternLines(List<Double> columns, List<Double> rows, List<Cell> cells) {

  /**
   * Where two lines cross.
   *
   * @param column its index
   * @param row its index
   */
  record Cell(int column, int row) {}

  public PatternLines {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    cells = List.copyOf(cells);
  }

  /** A column and a row through each of some places. */
  static PatternLines through(List<Point> places) {
    List<Double> columns = ascending(places.stream().map(Point::getX));
    List<Double> rows = ascending(places.stream().map(Point::getY));
    return new PatternLines(
        columns,
        rows,
        places.stream()
            .map(
                place ->
                    new Cell(
                        Collections.binarySearch(columns, place.getX()),
                        Collections.binarySearch(rows, place.getY())))
            .toList());
  }

  private static List<Double> ascending(Stream<Double> places) {
    return places.distinct().sorted().toList();
  }

  /** The lines that run a way. */
  List<Double> along(Axis axis) {
    return axis == Axis.UP ? columns : rows;
  }

  /** The same with one set of lines elsewhere. */
  PatternLines with(Axis axis, List<Double> places) {
    return axis == Axis.UP
        ? new PatternLines(places, rows, cells)
        : new PatternLines(columns, places, cells);
  }

  /** The same without the inserts that do not meet a condition. */
  PatternLines where(Predicate<Insert> condition) {
    return new PatternLines(
        columns, rows, cells.stream().filter(cell -> condition.test(insert(cell))).toList());
  }

  /** The inserts of one line. */
  List<Insert> on(Axis axis, int line) {
    return cells.stream()
        .filter(cell -> line == (axis == Axis.UP ? cell.column() : cell.row()))
        .map(this::insert)
        .toList();
  }

  /** All inserts, without marks. */
  public List<Insert> inserts() {
    return cells.stream().map(this::insert).toList();
  }

  private Insert insert(Cell cell) {
    return new Insert(
        Shapes.point(columns.get(cell.column()), rows.get(cell.row())),
        cell.column() + 1,
        cell.row() + 1);
  }
}
