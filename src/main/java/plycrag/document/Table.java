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

  /** Whether a column holds numbers, with gaps perhaps. */
  public boolean isNumeric(int column) {
    List<Cell> filled =
        rows.stream().map(row -> row.get(column)).filter(cell -> !cell.text().isBlank()).toList();
    return !filled.isEmpty() && filled.stream().noneMatch(Cell.Words.class::isInstance);
  }
}
