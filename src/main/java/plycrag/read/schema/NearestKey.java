package plycrag.read.schema;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plycrag.units.NearestWord;

/** Suggests the known word or key that a mistyped one is nearest to. */
public final class NearestKey {
  private NearestKey() {}

  /** {@code the nearest known word is drop}; empty where nothing is near. */
  public static String suggestion(String typed, List<String> known, String sort) {
    return NearestWord.find(typed, known)
        .map(word -> "the nearest known " + sort + " is " + word)
        .orElse("");
  }

  /**
   * The known key that is nearest, with its table. A key of the same name in another table is
   * nearer than one of the same table in which two letters differ.
   *
   * @param tables all that there are
   * @param table the table in which the unknown key stands, empty for none
   * @param typed the unknown key
   */
  public static Optional<String> key(List<TableSpec> tables, String table, String typed) {
    String small = typed.toLowerCase(Locale.ROOT);
    return tables.stream()
        .flatMap(each -> each.parameters().stream().map(known -> new Candidate(each, known.key())))
        .filter(candidate -> NearestWord.isNear(small, candidate.key()))
        .min(Comparator.comparingInt(candidate -> candidate.distance(table, small)))
        .map(candidate -> candidate.table().name() + "." + candidate.key());
  }

  private record Candidate(TableSpec table, String key) {
    int distance(String typedTable, String typed) {
      return 2 * NearestWord.distance(typed, key) + (table.name().equals(typedTable) ? 0 : 3);
    }
  }
}
