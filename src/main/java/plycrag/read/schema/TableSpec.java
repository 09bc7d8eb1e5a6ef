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
 */
public record TableSpec(
    String name,
    boolean isList,
    String meaning,
    List<Parameter<?>> parameters,
    List<AtLeast> relations) {

  /** How its header is written. */
  public String header() {
    return isList ? "[[" + name + "]]" : "[" + name + "]";
  }

  /** The parameter of that key. */
  public Optional<Parameter<?>> find(String key) {
    return parameters.stream()
        .<Parameter<?>>map(parameter -> parameter)
        .filter(parameter -> parameter.key().equals(key))
        .findFirst();
  }
}
