package plycrag.document;

import java.util.List;

/**
 * A table.
 *
 * @param title what it lists
 * @param columns names, as machines read them: lower case, a unit at the end where there is one
 * @param rows each as long as {@code columns}
 */
public record Table(String title, List<String> columns, List<List<Cell>> rows) {
  /** Copies the rows; rejects one of another length. */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    int width = columns.size();
    if (rows.stream().anyMatch(row -> row.size() != width)) {
      throw new IllegalArgumentException("a row of " + title + " has not " + width + " cells");
    }
  }

  /** The parts whose lines these are, by their marks. */
  public List<List<String>> marks() {
    return rows.stream()
        .flatMap(List::stream)
        .filter(Cell.Marks.class::isInstance)
        .map(cell -> ((Cell.Marks) cell).marks())
        .toList();
  }

  /** Whether a column holds numbers, with gaps perhaps. */
  public boolean isNumeric(int column) {
    List<Cell> filled =
        rows.stream().map(row -> row.get(column)).filter(cell -> !cell.text().isBlank()).toList();
    return !filled.isEmpty() && filled.stream().allMatch(Cell::isNumber);
  }
}
