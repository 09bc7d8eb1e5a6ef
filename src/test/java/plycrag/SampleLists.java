package plycrag;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import plycrag.layout.Layout;

/** The lists of samples, as they are kept, and their layouts. */
final class SampleLists {
  private SampleLists() {}

  static Layout layout(Path sample) {
    return Walls.sample(sample);
  }

  static List<CSVRecord> list(Path sample, String name) {
    String folder = sample.getFileName().toString().replace(".toml", "");
    Path file = Path.of("out-samples", folder, "lists", name);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(TestFiles.read(file), format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** What the shopping list says of an article, zero if it has none. */
  static int quantity(Path sample, String article) {
    return list(sample, "shopping.csv").stream()
        .filter(row -> row.get("list_article").equals(article))
        .mapToInt(row -> Integer.parseInt(row.get("quantity")))
        .sum();
  }
}
