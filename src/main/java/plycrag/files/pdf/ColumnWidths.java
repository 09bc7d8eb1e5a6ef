package plycrag.files.pdf;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plycrag.document.Cell;
import plycrag.document.Table;

/**
 * How wide the columns of a table are. Where there is room, each is as wide as its widest cell.
 * Where there is not, the widest columns give way, all down to the same width, but none below its
 * widest word; where even that is too much, words are broken.
 */
final class ColumnWidths {

  /** A room of 200 mm comes down to less than a nanometre. */
  private static final int HALVINGS = 40;

  private final Table table;
  private final PdfFont font;
  private final double room;

  /**
   * Measures one table.
   *
   * @param table whose columns
   * @param font of its letters
   * @param room for all columns, mm
   */
  ColumnWidths(Table table, PdfFont font, double room) {
    this.table = table;
    this.font = font;
    this.room = room;
  }

  /** The widths, mm. */
  double[] widths() {
    double[] wanted = each(column -> widest(column, false));
    double[] least = each(column -> widest(column, true));
    double all = DoubleStream.of(wanted).sum();
    double needed = DoubleStream.of(least).sum();
    if (all <= room) {
      return wanted;
    }
    if (needed >= room) {
      return each(column -> least[column] * room / needed);
    }
    double limit = limit(wanted, least);
    return each(column -> Math.max(least[column], Math.min(wanted[column], limit)));
  }

  /** The width that the widest columns share, found by halving. */
  private double limit(double[] wanted, double[] least) {
    double low = 0;
    double high = room;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      double sum = 0;
      for (int column = 0; column < wanted.length; column++) {
        sum += Math.max(least[column], Math.min(wanted[column], middle));
      }
      low = sum <= room ? middle : low;
      high = sum <= room ? high : middle;
    }
    return low;
  }

  private interface Measure {
    double of(int column);
  }

  private double[] each(Measure measure) {
    return IntStream.range(0, table.columns().size()).mapToDouble(measure::of).toArray();
  }

  /** The widest cell, or the widest word of any, the head among them. */
  private double widest(int column, boolean words) {
    LineBreaker breaker = new LineBreaker(font, TextStyle.TABLE);
    String head = table.columns().get(column);
    List<String> cells = table.rows().stream().map(row -> row.get(column)).map(Cell::text).toList();
    return Stream.concat(Stream.of(head), cells.stream())
        .mapToDouble(text -> words ? breaker.widestWord(text) : breaker.width(text))
        .max()
        .orElseThrow();
  }
}
