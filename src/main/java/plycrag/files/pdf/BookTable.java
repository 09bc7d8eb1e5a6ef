package plycrag.files.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plycrag.document.Cell;
import plycrag.document.Table;
import plycrag.geometry.Tolerance;

/** A table: numbers to the right; where it goes on, its title and its heads stand again. */
final class BookTable {
  private static final double GAP = 4.5;
  private static final double BETWEEN = 1.2;

  /** White after every so many rows leads the eye. */
  private static final int GROUP = 5;

  private static final double GROUP_GAP = 2;
  private static final double TICK = 3.2;
  private static final String BOX = "☐";

  private final Column column;
  private final Table table;
  private final double[] widths;
  private final List<List<String>> heads;

  BookTable(Column column, Table table) {
    this.column = column;
    this.table = table;
    double room = column.paper().column() - GAP * (table.columns().size() - 1);
    this.widths = new ColumnWidths(table, column.font(), room).widths();
    this.heads = broken(TextStyle.TABLE_HEAD, table.columns());
  }

  /** How much of it must stand on the page where it begins, mm. */
  double start() {
    double first = table.rows().isEmpty() ? 0 : height(pieces(table.rows().get(0)).get(0));
    return headHeight() + first;
  }

  /** Sets it. */
  void set() {
    column.room(start());
    head(table.title());
    for (int i = 0; i < table.rows().size(); i++) {
      List<Cell> row = table.rows().get(i);
      for (List<List<String>> piece : pieces(row)) {
        if (!column.fits(height(piece))) {
          column.turn();
          head(table.title() + ", continued");
        }
        set(piece, TextStyle.TABLE);
      }
      column.gap((i + 1) % GROUP == 0 ? GROUP_GAP : 0);
    }
  }

  private List<String> title(String title) {
    LineBreaker breaker = new LineBreaker(column.font(), TextStyle.STRONG);
    return breaker.lines(title, column.paper().column());
  }

  private double headHeight() {
    int titleLines = title(table.title() + ", continued").size();
    return titleLines * TextStyle.STRONG.leading() + BETWEEN + height(heads) + BETWEEN;
  }

  private void head(String title) {
    column.lines(TextStyle.STRONG, column.paper().left(), title(title));
    column.down(BETWEEN);
    set(heads, TextStyle.TABLE_HEAD);
    double width = IntStream.range(0, widths.length).mapToDouble(i -> widths[i] + GAP).sum() - GAP;
    double left = column.paper().left();
    column.leaf().rule(left, left + width, column.y() + BETWEEN / 2);
    column.down(BETWEEN);
  }

  /** Sets a row, or as much of it as goes on a page. */
  private void set(List<List<String>> cells, TextStyle style) {
    double left = column.paper().left();
    for (int i = 0; i < cells.size(); i++) {
      double y = column.y();
      for (String line : cells.get(i)) {
        set(line, style, left + (table.isNumeric(i) ? slack(i, line, style) : 0), y);
        y -= style.leading();
      }
      left += widths[i] + GAP;
    }
    column.down(height(cells));
  }

  private double slack(int i, String line, TextStyle style) {
    return widths[i] - new LineBreaker(column.font(), style).width(line);
  }

  private void set(String line, TextStyle style, double x, double top) {
    double foot = top - style.drop();
    if (line.equals(BOX)) {
      column.leaf().box(new Leaf.Box(x + 0.2, foot - 0.3, TICK, TICK));
    } else {
      column.leaf().words(style, x, foot, line);
    }
  }

  /** A row's cells in lines, cut where they are higher than a page. */
  private List<List<List<String>>> pieces(List<Cell> row) {
    List<List<String>> cells = broken(TextStyle.TABLE, row.stream().map(Cell::text).toList());
    int most = (int) ((column.paper().page() - headHeight() - BETWEEN) / TextStyle.TABLE.leading());
    int lines = cells.stream().mapToInt(List::size).max().orElse(0);
    List<List<List<String>>> pieces = new ArrayList<>();
    int from = 0;
    do {
      int start = from;
      pieces.add(cells.stream().map(cell -> part(cell, start, start + most)).toList());
      from += most;
    } while (from < lines);
    return pieces;
  }

  private static List<String> part(List<String> lines, int from, int to) {
    return lines.subList(Math.min(from, lines.size()), Math.min(to, lines.size()));
  }

  private List<List<String>> broken(TextStyle style, List<String> texts) {
    LineBreaker breaker = new LineBreaker(column.font(), style);
    return IntStream.range(0, texts.size())
        .mapToObj(i -> breaker.lines(texts.get(i), widths[i] + Tolerance.RECKONING))
        .collect(Collectors.toList());
  }

  private static double height(List<List<String>> cells) {
    int lines = cells.stream().mapToInt(List::size).max().orElse(0);
    return Math.max(1, lines) * TextStyle.TABLE.leading() + BETWEEN;
  }
}
