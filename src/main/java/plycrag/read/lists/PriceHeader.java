package plycrag.read.lists;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plycrag.read.schema.NearestKey;
import plycrag.read.text.CsvField;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.units.Printable;

/**
 * Which column stands where.
 *
 * @param columns index of each that the file has
 */
record PriceHeader(Map<PriceColumn, Integer> columns) {

  /** The columns that a first row names; reports what is wrong with it. */
  static PriceHeader of(List<CsvField> row, Faults faults) {
    EnumMap<PriceColumn, Integer> columns = new EnumMap<>(PriceColumn.class);
    for (int i = 0; i < row.size(); i++) {
      CsvField field = row.get(i);
      int index = i;
      PriceColumn.find(field.text())
          .ifPresentOrElse(
              column -> {
                if (columns.putIfAbsent(column, index) != null) {
                  faults.add(
                      column.word(), field.place(), "this column stands twice", "once is allowed");
                }
              },
              () -> refuse(field, faults));
    }
    reportMissing(columns, row.get(0).place(), faults);
    return new PriceHeader(columns);
  }

  private static void refuse(CsvField field, Faults faults) {
    boolean semicolons = field.text().contains(";");
    faults.add(
        "columns",
        field.place(),
        semicolons
            ? "the columns are parted by semicolons"
            : Printable.quoted(field.text()) + " is not a column of a price list",
        semicolons ? "commas are allowed" : String.join(", ", PriceColumn.words()) + " are allowed",
        NearestKey.suggestion(field.text(), PriceColumn.words(), "column"));
  }

  private static void reportMissing(
      Map<PriceColumn, Integer> columns, SourcePlace start, Faults faults) {
    List<String> missing = new ArrayList<>();
    for (PriceColumn column : PriceColumn.values()) {
      if (column.isNeeded() && !columns.containsKey(column)) {
        missing.add(column.word());
      }
    }
    if (!missing.isEmpty()) {
      faults.add(
          "columns",
          start,
          "the first row names no column " + String.join(", ", missing),
          "article, unit, price and currency are needed; size, contents, tax, mass and available"
              + " may stand");
    }
  }
}
