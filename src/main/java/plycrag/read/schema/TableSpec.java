package plycrag.read.schema;

import java.util.List;
import java.util.Optional;

/**
 * The declaration of one table.
 *
 * @param name its name
 * @param isList whether it is written with two brackets and may stand several times
 * @param meaning what it is about, in a sentence
 * @param parameters its keys, in the order in which a user reads them
 * @param relations what its values require of each other
 * @param inner tables that may stand in it, once each
 */
public record TableSpec(
    String name,
    boolean isList,
    String meaning,
    List<Parameter<?>> parameters,
    List<AtLeast> relations,
    List<TableSpec> inner) {

  /** One in which no other stands. */
  public TableSpec(
      String name,
      boolean isList,
      String meaning,
      List<Parameter<?>> parameters,
      List<AtLeast> relations) {
    this(name, isList, meaning, parameters, relations, List.of());
  }

  /** How its header is written. */
  public String header() {
    return isList ? "[[" + name + "]]" : "[" + name + "]";
  }

  /** How the header of one that may stand in it is written. */
  public String header(TableSpec one) {
    return "[" + name + "." + one.name() + "]";
  }

  /** The table of that name that may stand in it. */
  public Optional<TableSpec> findInner(String key) {
    return inner.stream().filter(table -> table.name().equals(key)).findFirst();
  }

  /** The parameter of that key. */
  public Optional<Parameter<?>> find(String key) {
    return parameters.stream()
        .<Parameter<?>>map(parameter -> parameter)
        .filter(parameter -> parameter.key().equals(key))
        .findFirst();
  }
}
