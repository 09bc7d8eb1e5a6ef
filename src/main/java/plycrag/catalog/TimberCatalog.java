package plycrag.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The sections of timber that have a name. */
public final class TimberCatalog {
  private static final List<Timber> ROWS = load();

  private TimberCatalog() {}

  /** All rows, in the order of the table. */
  public static List<Timber> all() {
    return ROWS;
  }

  /** The section of that name. */
  public static Optional<Timber> find(String name) {
    return ROWS.stream().filter(timber -> timber.name().equals(name)).findFirst();
  }

  private static List<Timber> load() {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream bytes = TimberCatalog.class.getResourceAsStream("timber.csv");
        CSVParser rows = format.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return rows.stream().map(TimberCatalog::timber).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Timber timber(CSVRecord row) {
    return new Timber(
        row.get("name"),
        Double.parseDouble(row.get("breadth_mm")),
        Double.parseDouble(row.get("depth_mm")),
        row.get("source"));
  }
}
