package plycrag.read.lists;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plycrag.read.schema.NearestKey;
import plycrag.read.text.CsvField;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;
import plycrag.units.Printable;

/**
 * Which column of a list stands where.
 *
 * @param <C> the columns that there may be
 * @param columns index of each that the file has
 */
record ListHeader<C extends ListColumn>(Map<C, Integer> columns) {
  /** Copies the map. */
  ListHeader {
    columns = Map.copyOf(columns);
  }

  /**
   * The columns that a first row names; reports what is wrong with it.
   *
   * @param list what kind of list it is, in words
   * @param all the columns that there may be
   */
  static <C extends ListColumn> ListHeader<C> of(
      List<CsvField> row, String list, List<C> all, Faults faults) {
    List<String> words = all.stream().map(ListColumn::word).toList();
    Map<C, Integer> columns = new HashMap<>();
    for (int at = 0; at < row.size(); at++) {
      CsvField field = row.get(at);
      int place = words.indexOf(field.text());
      if (place < 0) {
        refuse(field, list, words, faults);
      } else if (columns.putIfAbsent(all.get(place), at) != null) {
        faults.add(field.text(), field.place(), "this column stands twice", "once is allowed");
      }
    }
    reportMissing(columns, all, row.get(0).place(), faults);
    return new ListHeader<>(columns);
  }

  private static void refuse(CsvField field, String list, List<String> words, Faults faults) {
    boolean semicolons = field.text().contains(";");
    faults.add(
        "columns",
        field.place(),
        semicolons
            ? "the columns are parted by semicolons"
            : Printable.quoted(field.text()) + " is not a column of " + list,
        semicolons ? "commas are allowed" : String.join(", ", words) + " are allowed",
        NearestKey.suggestion(field.text(), words, "column"));
  }

  private static <C extends ListColumn> void reportMissing(
      Map<C, Integer> columns, List<C> all, SourcePlace start, Faults faults) {
    List<String> missing =
        all.stream()
            .filter(column -> column.isNeeded() && !columns.containsKey(column))
            .map(ListColumn::word)
            .toList();
    if (!missing.isEmpty()) {
      faults.add(
          "columns",
          start,
          "the first row names no column " + String.join(", ", missing),
          words(all, true) + " are needed; " + words(all, false) + " may stand");
    }
  }

  /** {@code article, unit, price and currency}. */
  private static <C extends ListColumn> String words(List<C> all, boolean isNeeded) {
    List<String> words =
        all.stream().filter(column -> column.isNeeded() == isNeeded).map(ListColumn::word).toList();
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
