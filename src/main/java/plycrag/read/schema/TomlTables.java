package plycrag.read.schema;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import plycrag.read.text.Located;
import plycrag.read.text.SourcePlace;

/**
 * The tables of a file.
 *
 * @param root the file's top level
 */
public record TomlTables(TomlTable root) {

  /** A key of the file's top level with what stands there; the value is null if nothing does. */
  public Located at(String key) {
    return located(root, key, key);
  }

  /** A key of a table with what stands there; the value is null if nothing does. */
  public static Located at(Located table, String key) {
    return located((TomlTable) table.value(), table.key() + "." + key, key);
  }

  /**
   * The tables of a name, whether or not written with as many brackets as declared; none where
   * something else stands.
   */
  public List<Located> tables(TableSpec table) {
    Located found = at(table.name());
    if (found.value() instanceof TomlTable) {
      return List.of(new Located(path(table, 0), found.place(), found.value()));
    }
    if (!(found.value() instanceof TomlArray)) {
      return List.of();
    }
    List<Located> elements = found.elements();
    return IntStream.range(0, elements.size())
        .filter(i -> elements.get(i).value() instanceof TomlTable)
        .mapToObj(
            i -> new Located(path(table, i), elements.get(i).place(), elements.get(i).value()))
        .toList();
  }

  /** The table of a name within another, if there is one. */
  public static Optional<Located> inner(Located table, TableSpec one) {
    return Optional.of(at(table, one.name())).filter(found -> found.value() instanceof TomlTable);
  }

  /** The lines on which a table begins at the top level or directly below it. */
  Set<Integer> tableLines() {
    Set<Integer> lines = new HashSet<>();
    for (String key : root.keySet()) {
      Located found = at(key);
      if (found.value() instanceof TomlTable table) {
        lines.add(found.place().line());
        table.keySet().forEach(inner -> lines.add(at(found, inner).place().line()));
      } else if (found.value() instanceof TomlArray) {
        for (Located element : found.elements()) {
          lines.add(element.place().line());
          if (element.value() instanceof TomlTable table) {
            table.keySet().forEach(inner -> lines.add(at(element, inner).place().line()));
          }
        }
      }
    }
    return lines;
  }

  private static Located located(TomlTable table, String path, String key) {
    return new Located(
        path, SourcePlace.of(table.inputPositionOf(List.of(key))), table.get(List.of(key)));
  }

  private static String path(TableSpec table, int index) {
    return table.isList() ? table.name() + "[" + (index + 1) + "]" : table.name();
  }
}
