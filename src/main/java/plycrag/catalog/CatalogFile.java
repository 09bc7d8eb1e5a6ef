package plycrag.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table that comes with the program. */
final class CatalogFile {
  private CatalogFile() {}

  /** Its rows, in order. */
  static List<CSVRecord> rows(String name) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream bytes = CatalogFile.class.getResourceAsStream(name);
        CSVParser rows = format.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
      return rows.getRecords();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
