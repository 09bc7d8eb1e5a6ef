package plycrag.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plycrag.read.schema.Parameter;
import plycrag.read.schema.Syntax;
import plycrag.read.schema.TableSpec;
import plycrag.read.schema.TomlTables;
import plycrag.read.schema.Values;
import plycrag.read.text.Context;
import plycrag.read.text.Located;

/** Reads the tables of a file by their declarations. */
final class DocumentReader {
  private final TomlTables document;
  private final Syntax syntax;
  private final Context context;

  /**
   * Reads one file.
   *
   * @param document the file
   * @param syntax what of it could not be read
   * @param context what bare numbers mean, and where findings go
   */
  DocumentReader(TomlTables document, Syntax syntax, Context context) {
    this.document = document;
    this.syntax = syntax;
    this.context = context;
  }

  /** What the file says in a table that stands once; nothing if the file lacks the table. */
  Values read(TableSpec table) {
    return readAll(table).stream()
        .findFirst()
        .orElse(new Values(table.name(), context.shownUnit(), Map.of()));
  }

  /** What the file says in each table of a name. */
  List<Values> readAll(TableSpec table) {
    return document.tables(table).stream().map(found -> values(table, found)).toList();
  }

  private Values values(TableSpec table, Located found) {
    Map<String, Values.Entry<?>> entries = new HashMap<>();
    for (Parameter<?> parameter : table.parameters()) {
      Located value = TomlTables.at(found, parameter.key());
      if (syntax.isBroken(value.key())) {
        entries.put(parameter.key(), new Values.Entry<>(value.place(), Optional.empty()));
      } else if (value.value() != null && !syntax.isLost(value.place())) {
        entries.put(parameter.key(), entry(parameter, value));
      }
    }
    Map<String, Values> inner = new HashMap<>();
    for (TableSpec one : table.inner()) {
      TomlTables.inner(found, one)
          .filter(there -> !syntax.isLost(there.place()))
          .ifPresent(there -> inner.put(one.name(), values(one, there)));
    }
    return new Values(found.key(), context.shownUnit(), entries, inner);
  }

  private <T> Values.Entry<T> entry(Parameter<T> parameter, Located value) {
    return new Values.Entry<>(value.place(), parameter.kind().read(value, context));
  }
}
