package plycrag.read.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a CSV file with their fields' places. */
public final class CsvRows {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker(CsvPlaces.COMMENT)
          .setIgnoreEmptyLines(true)
          .setIgnoreSurroundingSpaces(true)
          .get();

  private CsvRows() {}

  /** The rows that hold anything, as far as the grammar holds; reports where it does not. */
  public static List<List<CsvField>> of(String text, Faults faults) {
    List<List<CsvField>> rows = new ArrayList<>();
    CsvPlaces places = new CsvPlaces(text);
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      Iterator<CSVRecord> records = parser.iterator();
      while (records.hasNext()) {
        List<CsvField> row = row(records.next(), places.fields());
        if (!row.stream().allMatch(CsvField::isBlank)) {
          rows.add(row);
        }
      }
    } catch (IOException | UncheckedIOException malformed) {
      faults.add(
          "quotation",
          places.next(),
          "a quotation mark in this row does not end a field, or is missing",
          "a field that begins with a quotation mark ends with one, and holds others twice");
    }
    return rows;
  }

  private static List<CsvField> row(CSVRecord record, List<SourcePlace> places) {
    List<CsvField> fields = new ArrayList<>();
    for (int i = 0; i < record.size(); i++) {
      fields.add(new CsvField(places.get(i), record.get(i).strip()));
    }
    return fields;
  }
}
