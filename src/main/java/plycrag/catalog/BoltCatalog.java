package plycrag.catalog;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;

/** The bolts that are sold. */
public final class BoltCatalog {
  private static final List<Bolt> ROWS =
      CatalogFile.rows("bolts.csv").stream().map(BoltCatalog::bolt).toList();

  private BoltCatalog() {}

  /** All rows, in the order of the table. */
  static List<Bolt> all() {
    return ROWS;
  }

  /** The shortest of a diameter that is not shorter than a length, mm. */
  public static Optional<Bolt> shortest(double diameter, double least) {
    return ROWS.stream()
        .filter(bolt -> SoldSize.same(bolt.diameter(), diameter))
        .filter(bolt -> SoldSize.atLeast(bolt.length(), least))
        .min(Comparator.comparingDouble(Bolt::length));
  }

  private static Bolt bolt(CSVRecord row) {
    return new Bolt(
        Double.parseDouble(row.get("diameter_mm")),
        Double.parseDouble(row.get("length_mm")),
        row.get("source"));
  }
}
