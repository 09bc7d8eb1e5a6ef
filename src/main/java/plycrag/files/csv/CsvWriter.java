package plycrag.files.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import plycrag.document.Cell;
import plycrag.document.Table;

/**
 * Writes a table as comma-separated values.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180">RFC 4180</a>; lines end with a line feed
 *     alone, as in every other file
 */
public final class CsvWriter {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

  private CsvWriter() {}

  /** The text of the file; the table's title is left out, since the file's name says it. */
  public static String write(Table table) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      printer.printRecord(table.columns().stream().map(PlainWords::of));
      for (List<Cell> row : table.rows()) {
        printer.printRecord(row.stream().map(CsvWriter::field));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String field(Cell cell) {
    return cell.isNumber() ? cell.text() : PlainWords.of(cell.text());
  }
}
