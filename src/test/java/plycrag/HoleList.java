package plycrag;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A folder's {@code lists/holes.csv}, as any program would read it.
 *
 * @param rows in the order of the file
 */
public record HoleList(List<Row> rows) {

  /** A hole: what for, sheet, place on it, diameter and depth in mm. */
  public record Row(
      String mark,
      String kind,
      String sheet,
      String side,
      double x,
      double y,
      double diameter,
      double depth) {}

  /** Reads the list of a folder. */
  public static HoleList of(Path folder) {
    try (Reader reader = Files.newBufferedReader(folder.resolve("lists/holes.csv"))) {
      return of(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a list. */
  public static HoleList of(Reader list) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try {
      return new HoleList(format.parse(list).stream().map(HoleList::row).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(CSVRecord cells) {
    return new Row(
        cells.get("mark"),
        cells.get("kind"),
        cells.get("sheet"),
        cells.get("side"),
        number(cells, "sheet_x_mm"),
        number(cells, "sheet_y_mm"),
        number(cells, "diameter_mm"),
        number(cells, "depth_mm"));
  }

  private static double number(CSVRecord cells, String column) {
    return Double.parseDouble(cells.get(column));
  }

  /** The holes for inserts of one face of a sheet. */
  public List<Row> inserts(String sheet, String side) {
    return on(sheet, side).stream().filter(row -> row.kind().equals("insert")).toList();
  }

  /** The holes of one face of a sheet. */
  public List<Row> on(String sheet, String side) {
    return rows.stream()
        .filter(row -> row.sheet().equals(sheet) && row.side().equals(side))
        .toList();
  }
}
