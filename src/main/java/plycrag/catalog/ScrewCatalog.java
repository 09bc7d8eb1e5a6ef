package plycrag.catalog;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import plycrag.catalog.SoldScrew.Use;

/** The screws that are sold. */
public final class ScrewCatalog {
  private static final List<SoldScrew> ROWS =
      CatalogFile.rows("screws.csv").stream().map(ScrewCatalog::screw).toList();

  private ScrewCatalog() {}

  /** All rows, in the order of the table. */
  static List<SoldScrew> all() {
    return ROWS;
  }

  /** The screw of that size, mm. */
  public static Optional<SoldScrew> find(Use use, double diameter, double length) {
    return ROWS.stream()
        .filter(screw -> screw.use() == use && screw.isThick(diameter) && screw.isLong(length))
        .findFirst();
  }

  /** The shortest of a diameter whose length lies within limits, mm. */
  public static Optional<SoldScrew> shortest(Use use, double diameter, double least, double most) {
    return ROWS.stream()
        .filter(screw -> screw.use() == use && screw.isThick(diameter))
        .filter(screw -> screw.isWithin(least, most))
        .min(Comparator.comparingDouble(SoldScrew::length));
  }

  private static SoldScrew screw(CSVRecord row) {
    return new SoldScrew(
        Use.valueOf(row.get("use").toUpperCase(Locale.ROOT)),
        Double.parseDouble(row.get("diameter_mm")),
        Double.parseDouble(row.get("length_mm")),
        row.get("head"),
        row.get("drive"),
        row.get("source"));
  }
}
