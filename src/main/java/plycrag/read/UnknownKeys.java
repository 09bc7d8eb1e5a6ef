package plycrag.read;

import java.util.List;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import plycrag.read.schema.NearestKey;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Syntax;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TomlTables;
import plycrag.read.text.Faults;
import plycrag.read.text.Located;
import plycrag.units.NearestWord;

/** Reports keys and tables that are not declared, and tables that are not written as declared. */
final class UnknownKeys {
  private final TomlTables document;
  private final Syntax syntax;
  private final Faults faults;

  /**
   * Reports those of one file.
   *
   * @param document the file
   * @param syntax what of it could not be read
   * @param faults where findings go
   */
  UnknownKeys(TomlTables document, Syntax syntax, Faults faults) {
    this.document = document;
    this.syntax = syntax;
    this.faults = faults;
  }

  void report() {
    for (String key : document.root().keySet()) {
      Located found = document.at(key);
      if (!syntax.isLost(found.place())) {
        ParameterTable.find(key)
            .ifPresentOrElse(table -> reportIn(table, found), () -> reportUnknown(found));
      }
    }
  }

  /** Whether an unknown table is nearest to this one, so that its author meant it. */
  boolean isMistyped(TableSpec table) {
    List<String> names = ParameterTable.names();
    return document.root().keySet().stream()
        .filter(key -> !names.contains(key) && isTable(document.at(key).value()))
        .anyMatch(key -> isMeant(table, key, names));
  }

  private static boolean isMeant(TableSpec table, String key, List<String> names) {
    return NearestWord.find(key, names).filter(table.name()::equals).isPresent()
        || OtherWords.find("", key).filter(table.name()::equals).isPresent();
  }

  private void reportIn(TableSpec table, Located found) {
    if (!isWrittenAsDeclared(table, found.value())) {
      faults.add(
          found.key(),
          found.place(),
          shape(found) + " stands here",
          table.header() + " is allowed");
    }
    document.tables(table).forEach(each -> reportIn(table, table.header(), each));
  }

  /** Reports what is not declared in one table as it stands in the file. */
  private void reportIn(TableSpec table, String header, Located each) {
    for (String key : ((TomlTable) each.value()).keySet()) {
      Located entry = TomlTables.at(each, key);
      if (syntax.isLost(entry.place()) || table.find(key).isPresent()) {
        continue;
      }
      table
          .findInner(key)
          .ifPresentOrElse(
              inner -> reportInner(inner, table.header(inner), entry),
              () -> reportUnknown(table, header, key, entry));
    }
  }

  private void reportInner(TableSpec inner, String header, Located entry) {
    if (entry.value() instanceof TomlTable) {
      reportIn(inner, header, entry);
    } else {
      faults.add(entry.key(), entry.place(), shape(entry) + " stands here", header + " is allowed");
    }
  }

  private void reportUnknown(TableSpec table, String header, String key, Located entry) {
    List<String> keys = table.parameters().stream().map(Parameter::key).toList();
    faults.add(
        entry.key(),
        entry.place(),
        "there is no such key",
        "in " + header + " " + String.join(", ", keys) + " may stand",
        suggestion(table.name(), key));
  }

  private void reportUnknown(Located found) {
    if (isTable(found.value())) {
      faults.add(
          found.key(),
          found.place(),
          "there is no such table",
          String.join(", ", ParameterTable.names()) + " are allowed",
          OtherWords.suggestion("", found.key())
              .orElse(NearestKey.suggestion(found.key(), ParameterTable.names(), "table")));
    } else if (!syntax.isUnderHeader(found.place())) {
      faults.add(
          found.key(),
          found.place(),
          "this key stands in no table",
          "keys are allowed below a header such as [wall]",
          suggestion("", found.key()));
    }
  }

  private static String suggestion(String table, String key) {
    return OtherWords.suggestion(table, key)
        .or(
            () ->
                NearestKey.key(ParameterTable.TABLES, table, key)
                    .map(known -> "the nearest known key is " + known))
        .orElse("");
  }

  private static boolean isWrittenAsDeclared(TableSpec table, Object value) {
    return table.isList() ? isListOfTables(value) : value instanceof TomlTable;
  }

  private static boolean isTable(Object value) {
    return value instanceof TomlTable || isListOfTables(value);
  }

  private static boolean isListOfTables(Object value) {
    return value instanceof TomlArray array
        && IntStream.range(0, array.size())
            .mapToObj(array::get)
            .allMatch(TomlTable.class::isInstance);
  }

  private static String shape(Located found) {
    return isListOfTables(found.value()) ? "a list of tables" : found.kindWords();
  }
}
