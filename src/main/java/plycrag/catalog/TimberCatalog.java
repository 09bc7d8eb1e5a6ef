package plycrag.catalog;

import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The sections of timber that have a name. */
public final class TimberCatalog {
  private static final List<SoldTimber> ROWS =
      CatalogFile.rows("timber.csv").stream().map(TimberCatalog::timber).toList();

  private TimberCatalog() {}

  /** All rows, in the order of the table. */
  public static List<SoldTimber> all() {
    return ROWS;
  }

  /** The section of that name. */
  public static Optional<SoldTimber> find(String name) {
    return ROWS.stream().filter(timber -> timber.name().equals(name)).findFirst();
  }

  private static SoldTimber timber(CSVRecord row) {
    return new SoldTimber(
        row.get("name"),
        Double.parseDouble(row.get("breadth_mm")),
        Double.parseDouble(row.get("depth_mm")),
        row.get("source"));
  }
}
