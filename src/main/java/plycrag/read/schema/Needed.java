package plycrag.read.schema;

import java.util.List;
import plycrag.read.text.Faults;
import plycrag.read.text.SourcePlace;

/** Keys without which an entry of a list says nothing. */
public final class Needed {
  /** What stands for the default of such a key. */
  public static final DefaultValue<Double> NONE = DefaultValue.derived("none: it is needed");

  private Needed() {}

  /**
   * Reports keys that are left out.
   *
   * @param what the entry is, in a word
   */
  public static void check(
      Values values, TableSpec table, String what, List<Parameter<?>> needed, Faults faults) {
    for (Parameter<?> parameter : needed) {
      if (!values.isGiven(parameter)) {
        faults.add(
            values.path(),
            firstPlace(values, table),
            "this " + what + " has no " + parameter.key(),
            "a " + what + " with one is allowed");
      }
    }
  }

  /** Where the first key of an entry stands. */
  public static SourcePlace firstPlace(Values values, TableSpec table) {
    return table.parameters().stream()
        .filter(values::isGiven)
        .findFirst()
        .map(values::place)
        .orElse(SourcePlace.START);
  }
}
