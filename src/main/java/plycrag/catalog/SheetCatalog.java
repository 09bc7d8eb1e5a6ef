package plycrag.catalog;

import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The sizes in which sheets of plywood are sold. */
public final class SheetCatalog {
  private static final List<StockSize> ROWS =
      CatalogFile.rows("sheets.csv").stream().map(SheetCatalog::size).toList();

  private SheetCatalog() {}

  /** All rows, in the order of the table. */
  public static List<StockSize> all() {
    return ROWS;
  }

  /** The size of that name. */
  public static Optional<StockSize> find(String name) {
    return ROWS.stream().filter(size -> size.name().equals(name)).findFirst();
  }

  private static StockSize size(CSVRecord row) {
    return new StockSize(
        row.get("name"),
        Double.parseDouble(row.get("length_mm")),
        Double.parseDouble(row.get("width_mm")),
        row.get("source"));
  }
}
